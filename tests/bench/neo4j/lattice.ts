import type { AnyRow } from '../../../src/domain/model/row.ts';

/** Pictures of a layer, each copied from all of the layer before. */
const lattice = { wide: 3, deep: 30 } as const;

/** Id of the picture from which 3^n ways lead down to the first layer: over 8 layers, or over all of them. */
export function topOfLattice(layers: number): string {
  return `plate-lattice-top-${layers}`;
}

/** A lattice of 30 layers of 3 pictures, with a picture above the eighth layer and one above the last. */
export function latticeRows(): readonly AnyRow[] {
  const layers = Array.from({ length: lattice.deep }, (_, layer) => layerOf(layer));
  const tops = [8, lattice.deep].map(layer => ({ id: topOfLattice(layer), layer }));
  const pictures = [...layers.flatMap((ids, layer) => ids.map(id => ({ id, layer }))), ...tops];
  return pictures.flatMap(({ id, layer }): AnyRow[] => [
    { id, kind: 'Plate', caption: `Print of a lattice, ${layer}` },
    ...(layer === 0 ? [] : layers[layer - 1]!).map((source, i): AnyRow => {
      const claim = `copying-${id.slice('plate-'.length)}-${i}`;
      return { id: claim, kind: 'Copying', copy: id, source, handedness: 'SAME' };
    }),
  ]);
}

function layerOf(layer: number): readonly string[] {
  return Array.from({ length: lattice.wide }, (_, i) => `plate-lattice-${layer}-${i}`);
}
