// Puts a station together again from what `build` wrote, and nothing else: the report's placements and the STL files.
//
//   node rebuild.mjs FOLDER
//
// Prints: {"bodies": {id: {"status", "volume"}},
//          "pairs": [{"a", "b", "volume", "least"}]}  every pair that shares volume;
// "least" is the smallest extent of the box of a connected piece of what they share, the greatest over the pieces, mm: how
// far two faces that lie on each other go into each other.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { kernel, solidOf } from './solids.mjs';

/** Vertices and triangles of a binary STL; corners with equal coordinates become one vertex. */
function readStl(file) {
  const bytes = readFileSync(file);
  const count = bytes.readUInt32LE(80);
  const vertices = [];
  const triangles = [];
  const known = new Map();
  for (let facet = 0; facet < count; facet++) {
    for (let corner = 0; corner < 3; corner++) {
      const at = 84 + 50 * facet + 12 + 12 * corner;
      const point = [bytes.readFloatLE(at), bytes.readFloatLE(at + 4), bytes.readFloatLE(at + 8)];
      const key = point.join();
      if (!known.has(key)) {
        known.set(key, known.size);
        vertices.push(...point);
      }
      triangles.push(known.get(key));
    }
  }
  return { vertices, triangles };
}

const { Manifold } = await kernel();
const folder = process.argv[2];
const report = JSON.parse(readFileSync(join(folder, 'report.json'), 'utf8'));
const bodies = report.bodies.map((body) => {
  const solid = solidOf({ ...readStl(join(folder, body.stl)), placement: body.placement });
  return { id: body.id, solid, box: solid.boundingBox() };
});

const apart = (a, b) => [0, 1, 2].some((k) => a.min[k] > b.max[k] || b.min[k] > a.max[k]);

function leastExtent(solid) {
  const box = solid.boundingBox();
  solid.delete();
  return Math.min(...[0, 1, 2].map((k) => box.max[k] - box.min[k]));
}

const pairs = [];
for (let i = 0; i < bodies.length; i++) {
  for (let j = i + 1; j < bodies.length; j++) {
    if (apart(bodies[i].box, bodies[j].box)) {
      continue;
    }
    const shared = Manifold.intersection(bodies[i].solid, bodies[j].solid);
    const volume = shared.volume();
    if (volume > 0) {
      const least = Math.max(...shared.decompose().map(leastExtent));
      pairs.push({ a: bodies[i].id, b: bodies[j].id, volume, least });
    }
    shared.delete();
  }
}

process.stdout.write(
  JSON.stringify({
    bodies: Object.fromEntries(
      bodies.map(({ id, solid }) => [id, { status: solid.status(), volume: solid.volume() }]),
    ),
    pairs,
  }),
);
