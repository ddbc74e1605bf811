// An independent solid kernel (manifold-3d) measures our meshes and what pairs of them share.
//
//   node agreement.mjs FILE.json
//
// FILE: {"solids": [{"vertices": [x, y, z, ...], "triangles": [a, b, c, ...],
//                    "placement": [16 numbers, column by column]}], "pairs": [[i, j], ...]}
// Prints: {"solids": [{"status", "volume", "area"}], "pairs": [volume, ...]}, in mm.
import { readFileSync } from 'node:fs';
import Module from 'manifold-3d/manifold.js';

const kernel = await Module();
kernel.setup();
const { Manifold, Mesh } = kernel;
const input = JSON.parse(readFileSync(process.argv[2], 'utf8'));

const solids = input.solids.map(solidOf);
process.stdout.write(
  JSON.stringify({
    solids: solids.map((solid) => ({
      status: String(solid.status()),
      volume: solid.volume(),
      area: solid.surfaceArea(),
    })),
    pairs: input.pairs.map(([a, b]) => Manifold.intersection(solids[a], solids[b]).volume()),
  }),
);

// The kernel's door takes single precision, its inside computes in doubles: each vertex is found
// again by its rounded place and put back to its exact one. Two vertices with one rounded place
// would be told apart by nothing, so that is an error.
function solidOf({ vertices, triangles, placement }) {
  const exact = new Map();
  for (let at = 0; at < vertices.length; at += 3) {
    const key = keyOf(vertices, at);
    if (exact.has(key)) {
      throw new Error(`two vertices at ${key}`);
    }
    exact.set(key, at);
  }
  const rounded = new Manifold(
    new Mesh({
      numProp: 3,
      vertProperties: Float32Array.from(vertices),
      triVerts: Uint32Array.from(triangles),
    }),
  );
  const restored = rounded.warpBatch((places, count) => {
    for (let at = 0; at < 3 * count; at += 3) {
      const from = exact.get(keyOf(places, at));
      if (from === undefined) {
        throw new Error(`no vertex at ${keyOf(places, at)}`);
      }
      for (let k = 0; k < 3; k++) {
        places[at + k] = vertices[from + k];
      }
    }
  });
  return restored.transform(placement);
}

function keyOf(numbers, at) {
  return [0, 1, 2].map((k) => Math.fround(numbers[at + k]) + 0).join(' ');
}
