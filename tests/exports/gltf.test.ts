import { NodeIO } from '@gltf-transform/core';
import { validateBytes } from 'gltf-validator';
import { describe, expect, it } from 'vitest';
import { modelGlb } from '../../src/exports/gltf';
import { byHand } from '../drawings/fixture';
import { examples, workedExample } from '../tools/goldens';

const read = async (glb: Uint8Array) => new NodeIO().readBinary(glb);

describe('the model', () => {
  it.each(examples())('of %s passes the validator without an error or a warning', async (name) => {
    const glb = await modelGlb(workedExample(name).parts, name);
    const { issues } = await validateBytes(glb, { maxIssues: 20 });
    expect(issues.messages.filter(({ severity }) => severity < 2)).toEqual([]);
    expect([issues.numErrors, issues.numWarnings]).toEqual([0, 0]);
  });

  it('has a node for each part, named by its mark, that says what it is', async () => {
    const document = await read(await modelGlb(byHand.parts, 'Counter'));
    const nodes = document.getRoot().listNodes();
    expect(nodes.map((node) => node.getName())).toEqual(byHand.parts.map((part) => part.mark));
    const noggin = nodes.find((node) => node.getName() === 'A-NG2');
    expect(noggin?.getExtras()).toMatchObject({ name: 'noggin', material: 'sawn-38x63', lengthMm: 362, run: 'A' });
    expect(noggin?.getExtras()).toMatchObject({ fitted: 'workshop', section: 'S1' });
    expect(document.getRoot().getDefaultScene()?.getName()).toBe('Counter');
  });

  it('is in metres with y up, front to +z', async () => {
    const document = await read(
      await modelGlb(
        byHand.parts.filter((part) => part.mark === 'A-TP1'),
        'Top',
      ),
    );
    const position = document.getRoot().listMeshes()[0].listPrimitives()[0].getAttribute('POSITION')!;
    const near = (values: number[], expected: number[]): void =>
      values.forEach((value, i) => {
        expect(value).toBeCloseTo(expected[i], 6);
      });
    near(position.getMin([]), [-0.03, 1.01, -0.5]);
    near(position.getMax([]), [1.83, 1.05, 0.075]);
  });

  it.each(examples())('of %s holds the volume of its parts', async (name) => {
    const { parts } = workedExample(name);
    const document = await read(await modelGlb(parts, name));
    const volumes = new Map(
      document
        .getRoot()
        .listNodes()
        .map((node) => [
          node.getName(),
          volumeOf(node.getMesh()!.listPrimitives()[0].getAttribute('POSITION')!.getArray()!),
        ]),
    );
    // Single floats of metres: a part a few metres off holds its size to about 1e-4 of its thinnest side.
    for (const part of parts) {
      const made = volumes.get(part.mark)! * 1e9;
      expect(Math.abs(made - part.volumeMm3) / part.volumeMm3, part.mark).toBeLessThan(1e-3);
    }
  });

  it('has normals of unit length square to their triangles', async () => {
    const document = await read(await modelGlb(workedExample(examples()[0]).parts, 'x'));
    for (const mesh of document.getRoot().listMeshes()) {
      const [primitive] = mesh.listPrimitives();
      const [p, n] = [primitive.getAttribute('POSITION')!.getArray()!, primitive.getAttribute('NORMAL')!.getArray()!];
      for (let i = 0; i < p.length; i += 9) {
        const normal = [n[i], n[i + 1], n[i + 2]];
        expect(Math.abs(Math.hypot(...normal) - 1)).toBeLessThan(1e-5);
        const along = [p[i + 3] - p[i], p[i + 4] - p[i + 1], p[i + 5] - p[i + 2]];
        expect(Math.abs(along[0] * normal[0] + along[1] * normal[1] + along[2] * normal[2])).toBeLessThan(1e-5);
      }
    }
  });
});

/** Volume inside a closed mesh of triangles, by the sum of signed tetrahedra (divergence theorem). */
function volumeOf(p: ArrayLike<number>): number {
  let six = 0;
  for (let i = 0; i < p.length; i += 9) {
    six +=
      p[i] * (p[i + 4] * p[i + 8] - p[i + 5] * p[i + 7]) -
      p[i + 1] * (p[i + 3] * p[i + 8] - p[i + 5] * p[i + 6]) +
      p[i + 2] * (p[i + 3] * p[i + 7] - p[i + 4] * p[i + 6]);
  }
  return six / 6;
}
