import { tenth } from '../base/tenth';
import type { Design } from '../vocabulary/design';
import type { Part } from '../vocabulary/part';

/** What one man may be asked to lift close to the body, at best height, kg (HSE lifting filter, L23; from memory). No legal limit. */
const ONE_MAN_KG = 25;

/** What can hurt somebody in making and fitting this unit, in the order of the work. They defer to local codes and licensed people. */
export function cautionsOf({ job, parts }: Pick<Design, 'job' | 'parts'>): readonly string[] {
  const sheets = new Set(job.stock.items.filter((item) => item.kind === 'sheet').map((item) => item.id));
  const heaviest = parts.reduce<Part | undefined>(
    (most, p) => (most && most.weightKg >= p.weightKg ? most : p),
    undefined,
  );
  return [
    'Check the list against the room, your own rod and the stock you were sold before you cut.',
    'Saws and routers: guards and riving knife on, push sticks, no gloves; moulded strips are run long and cut to length afterwards.',
    ...(parts.some((p) => sheets.has(p.material))
      ? ['MDF and hardwood dust is harmful: extraction at the machine and a fitting mask; local exposure limits apply.']
      : []),
    ...(heaviest && heaviest.weightKg > ONE_MAN_KG
      ? [
          `${heaviest.mark} alone weighs ${tenth(heaviest.weightKg)} kg; one man is asked to lift ${ONE_MAN_KG} kg at most by the usual guide. Plan the lift.`,
        ]
      : []),
    ...(parts.some((p) => p.finish === 'oil')
      ? [
          'Rags wet with oil can catch fire by themselves: dry them flat outdoors, or keep them under water in a closed metal can.',
        ]
      : []),
    'Fix the counter against tipping: people lean on it. Wiring and gas in or behind it are for licensed people; local codes come first.',
  ];
}
