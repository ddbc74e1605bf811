// An independent solid kernel measures solids and what pairs of them share.
//
//   node overlap.mjs FILE.json
//
// FILE: {"solids": [{"vertices": [x, y, z, ...], "triangles": [a, b, c, ...],
//                    "placement": [16 numbers, column by column, optional]}],
//        "pairs": [[i, j], ...]}
// Prints: {"solids": [{"status", "volume", "area", "genus", "triangles"}],
//          "pairs": [{"a", "b", "volume", "union"}]}
// Lengths in mm, volumes in mm3. "status" is "NoError" for a closed and oriented mesh.
import { readFileSync } from 'node:fs';
import { kernel, solidOf } from './solids.mjs';

const { Manifold } = await kernel();
const input = JSON.parse(readFileSync(process.argv[2], 'utf8'));

const solids = input.solids.map((mesh) => solidOf(mesh));

const pairs = (input.pairs ?? []).map(([a, b]) => {
  const shared = Manifold.intersection(solids[a], solids[b]);
  const both = Manifold.union(solids[a], solids[b]);
  const answer = { a, b, volume: shared.volume(), union: both.volume() };
  shared.delete();
  both.delete();
  return answer;
});

process.stdout.write(
  JSON.stringify({
    solids: solids.map((solid) => ({
      status: solid.status(),
      volume: solid.volume(),
      area: solid.surfaceArea(),
      genus: solid.genus(),
      triangles: solid.numTri(),
    })),
    pairs,
  }),
);
