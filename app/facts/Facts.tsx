import { Cautions } from './Cautions';
import { Findings } from './Findings';
import { PartCard } from './PartCard';
import { Materials, Sizes } from './Sizes';

/** What follows from the decisions. */
export function Facts() {
  return (
    <>
      <PartCard />
      <Sizes />
      <Findings />
      <Materials />
      <Cautions />
    </>
  );
}
