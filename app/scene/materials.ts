import {
  DataTexture,
  LinearFilter,
  LinearMipmapLinearFilter,
  LineBasicMaterial,
  type Material,
  MeshLambertMaterial,
  RepeatWrapping,
  ShadowMaterial,
  SRGBColorSpace,
} from 'three';
import { GRAIN_SIZE, grainPicture } from './grain';
import { type Surface, TOLD_APART } from './surface';

/** One repeat of the grain picture covers this much of a part, mm along and round it (chosen by eye). */
function grain(depth: number, along: number, round: number): DataTexture {
  const texture = new DataTexture(grainPicture(depth), GRAIN_SIZE, GRAIN_SIZE);
  texture.wrapS = RepeatWrapping;
  texture.wrapT = RepeatWrapping;
  texture.repeat.set(1 / along, 1 / round);
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearMipmapLinearFilter;
  texture.generateMipmaps = true;
  texture.anisotropy = 4;
  texture.colorSpace = SRGBColorSpace;
  texture.needsUpdate = true;
  return texture;
}

/** Faces are pushed back a hair, so that lines along their edges are drawn in front of them. */
const PUSHED = { vertexColors: true, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 } as const;

const make: Readonly<Record<Surface, () => Material>> = {
  paint: () => new MeshLambertMaterial({ color: '#b9c4b4', ...PUSHED }),
  board: () => new MeshLambertMaterial({ color: '#c2a47c', ...PUSHED }),
  sawn: () => new MeshLambertMaterial({ color: '#f6e2b6', map: grain(0.24, 1400, 170), ...PUSHED }),
  oiled: () => new MeshLambertMaterial({ color: '#b98450', map: grain(0.34, 3100, 430), ...PUSHED }),
  site: () => new MeshLambertMaterial({ color: TOLD_APART.site, ...PUSHED }),
  now: () => new MeshLambertMaterial({ color: TOLD_APART.now, ...PUSHED }),
};

const made = new Map<Surface, Material>();

/** The material of a surface; made once and shared by everything drawn with it. */
export function materialFor(surface: Surface): Material {
  let material = made.get(surface);
  if (!material) {
    material = make[surface]();
    made.set(surface, material);
  }
  return material;
}

export const edgeLine = new LineBasicMaterial({ color: '#3a3226', transparent: true, opacity: 0.32 });
export const groundShade = new ShadowMaterial({ color: '#2a2016', opacity: 0.2 });

/** What is picked out is rubbed with red chalk, and its outline shows through whatever lies in front of it. */
export const chalk = new MeshLambertMaterial({
  color: '#c8542c',
  emissive: '#5a1c08',
  transparent: true,
  opacity: 0.62,
  depthWrite: false,
  polygonOffset: true,
  polygonOffsetFactor: -1,
  polygonOffsetUnits: -1,
});
export const chalkLine = new LineBasicMaterial({ color: '#8a2f12', transparent: true, depthTest: false });
/** Measuring lines of a part are read through everything; those of the unit lie behind what stands before them. */
export const floorLine = new LineBasicMaterial({ color: '#4a463d' });
export const measureLine = new LineBasicMaterial({
  color: '#2c2a26',
  transparent: true,
  opacity: 0.85,
  depthTest: false,
});
