import type { AnyCutPlan, CutBatch, PlacedOnBar, PlacedOnSheet } from '../../vocabulary/cut-plan';

/** The marks of a placed piece of the plan: copies are given out in the order of the plan. */
export type Copies = (index: number, piece: PlacedOnBar | PlacedOnSheet) => readonly string[];

/** Which copy of its piece each placed one is. Copies are alike for the saw: the first one in the plan gets the first one's marks. */
export function copiesOf({ marks }: Pick<CutBatch, 'marks'>, plan: AnyCutPlan): Copies {
  const given = new Map<number, number>();
  const own = (plan.kind === 'sheets' ? plan.sheets : plan.bars).map(({ pieces }) =>
    (pieces as readonly (PlacedOnBar | PlacedOnSheet)[]).map((placed) => {
      const copy = given.get(placed.piece) ?? 0;
      given.set(placed.piece, copy + 1);
      return { key: placeKey(placed), marks: marks[placed.piece]?.[copy] ?? [] };
    }),
  );
  const byPlace = own.map((placed) => new Map(placed.map(({ key, marks: some }) => [key, some])));
  return (index, piece) => byPlace[index].get(placeKey(piece)) ?? [];
}

const placeKey = (placed: PlacedOnBar | PlacedOnSheet): string =>
  'at' in placed ? `${placed.piece} ${placed.at}` : `${placed.piece} ${placed.x} ${placed.y}`;
