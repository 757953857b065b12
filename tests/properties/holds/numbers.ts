import type { Design } from '../../../src/vocabulary/design';
import type { Found } from '../sample';

/** Every number anywhere in a design is one: nothing infinite, nothing that is no number. */
export function finite(made: Design): Found {
  const wrong: string[] = [];
  let looked = 0;
  const walk = (value: unknown, path: string): void => {
    if (typeof value === 'number') {
      looked++;
      if (!Number.isFinite(value)) wrong.push(`${path} is ${value}`);
    } else if (typeof value === 'object' && value !== null) {
      for (const [key, inner] of Object.entries(value)) walk(inner, `${path}/${key}`);
    }
  };
  walk(made, '');
  return { wrong, looked };
}

/** Every part has length, width, thickness, volume and weight, and none of its lengths is longer than its overall length. */
export function positive(made: Design): Found {
  const wrong = made.parts.flatMap(({ mark, size, shortPoint, shopLength, volumeMm3, weightKg, ends }) => {
    const above = { ...size, volumeMm3, weightKg };
    const said = Object.entries(above).flatMap(([name, n]) => (n > 0 ? [] : [`${mark}: ${name} is ${n}`]));
    if (shortPoint < 0 || shortPoint > size.length + 1e-6)
      said.push(`${mark}: short point ${shortPoint} of ${size.length}`);
    if (Math.abs(shopLength - size.length) > made.job.tools.roundingStep / 2 + 1e-6)
      said.push(`${mark}: shop length ${shopLength} of ${size.length}`);
    for (const { angleDeg, sawDeg, tiltDeg } of ends)
      if (angleDeg <= 0 || angleDeg > 90 || sawDeg < 0 || sawDeg >= 90 || tiltDeg < 0 || tiltDeg >= 90)
        said.push(`${mark}: an end at ${angleDeg}, saw ${sawDeg}, tilt ${tiltDeg}`);
    return said;
  });
  return { wrong, looked: made.parts.length };
}
