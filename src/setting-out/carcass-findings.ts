import { tenth } from '../base/tenth';
import type { Finding } from '../vocabulary/finding';

/** Over a worktop at least this much stays clear: a hand must get in to wipe it (common practice, no source). */
export const LEAST_OVER = 50;

const note = (rest: Omit<Finding, 'severity' | 'source'>): Finding => ({
  severity: 'note',
  source: 'geometry of the setting-out',
  ...rest,
});

/** Nothing stands behind the front: too little depth or height is left. */
export const noRoom = (way: 'deep' | 'high', value: number, limit: number): Finding =>
  note({
    rule: way === 'deep' ? 'carcass-too-shallow' : 'carcass-too-low',
    subject: { path: way === 'deep' ? '/unit/depth' : '/unit/height' },
    value: Math.max(0, value),
    limit,
    message: `Behind the front frame the carcass would be ${tenth(Math.max(0, value))} mm ${way}; ${tenth(limit)} mm is the least that its posts and rails need. None is made.`,
    remedy: `${way === 'deep' ? 'Deepen' : 'Raise'} the unit, or choose lighter timber, a smaller recess for toes, or no carcass.`,
  });

/** A length of a run too short for two cross frames. */
export const tooShort = (run: string, value: number, limit: number): Finding =>
  note({
    rule: 'carcass-too-short',
    subject: { run },
    value: Math.max(0, value),
    limit,
    message: `Behind run ${run} a length of ${tenth(Math.max(0, value))} mm is left between corners and joins; two cross frames need ${tenth(limit)} mm. None stand there.`,
    remedy: 'Lengthen the run, move the join, or fix the top to the front frame alone there.',
  });

/** The front frame stands on a plinth higher than the bottom rails were to lie. */
export const railsRaised = (value: number, limit: number): Finding =>
  note({
    rule: 'carcass-rails-raised',
    subject: { path: '/unit/elements/carcass/toeHeight' },
    value,
    limit,
    message: `Bottom rails are wished ${tenth(value)} mm above the floor; they lie at ${tenth(limit)} mm, for the front frame begins there.`,
    remedy: 'Nothing, if that height suits; else let the front frame stand lower.',
  });

/** The worktop reaches further back than the posts were to stand, and the top covers it: they stand flush with its rear edge. */
export const postsMoved = (wished: number, made: number, posts: number): Finding =>
  note({
    rule: 'carcass-posts-moved',
    subject: { path: '/unit/elements/carcass/setBack' },
    value: made,
    limit: wished,
    message: `Rear posts are wished ${tenth(wished)} mm in front of the top’s back edge, ${tenth(made - posts - wished)} mm behind the face of the front frame; the worktop reaches further back, so they stand flush with its rear edge: ${tenth(made)} mm in front of the top’s, ${tenth(-posts)} mm behind that face.`,
    remedy: 'Nothing, if they may stand there; else make the worktop less deep, or set the posts back less.',
  });

/** A worktop whose height leaves no room for what carries it, or for a hand over it. */
export const badHeight = (value: number, way: 'low' | 'high', limit: number): Finding => ({
  ...note({
    rule: `worktop-too-${way}`,
    subject: { path: '/unit/elements/worktop/height' },
    value,
    limit,
    message:
      way === 'low'
        ? `The worktop is wished at ${tenth(value)} mm; its rails clear the bottom rails from ${tenth(limit)} mm. None is made; what stands behind stays as for that height.`
        : `The worktop is wished at ${tenth(value)} mm; ${tenth(limit)} mm is the highest that leaves ${LEAST_OVER} mm clear under the top and its rails. None is made; what stands behind stays as for that height.`,
    remedy: way === 'low' ? 'Raise the worktop.' : 'Lower the worktop or raise the unit.',
  }),
  severity: 'warn',
});

/** A worktop without a carcass. */
export const nothingUnder = (value: number): Finding => ({
  ...note({
    rule: 'worktop-uncarried',
    subject: { path: '/unit/elements/worktop/height' },
    value,
    message: `A worktop is wished at ${tenth(value)} mm, and no carcass is built to carry it. None is made.`,
    remedy: 'Build the carcass, or take the worktop away.',
  }),
  severity: 'warn',
});
