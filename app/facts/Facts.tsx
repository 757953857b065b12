import { Cautions } from './Cautions';
import { Findings } from './Findings';
import { PartCard } from './PartCard';
import { Sections } from './Sections';
import { Materials, Sizes } from './Sizes';
import { Spacers } from './Spacers';

/** What follows from the decisions. */
export function Facts() {
  return (
    <>
      <PartCard />
      <Sizes />
      <Findings />
      <Sections />
      <Spacers />
      <Materials />
      <Cautions />
    </>
  );
}
