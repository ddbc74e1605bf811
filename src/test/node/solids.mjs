// Opens the independent kernel and hands meshes over to it.
import Module from 'manifold-3d/manifold.js';

let opened;

/** The kernel, opened once. */
export async function kernel() {
  if (!opened) {
    opened = await Module();
    opened.setup();
  }
  return opened;
}

/**
 * A solid from {vertices, triangles, placement}; call kernel() first.
 *
 * The kernel's door takes single precision only. Inside it computes in doubles, so each vertex is
 * put back to its exact place right after the door.
 */
export function solidOf({ vertices, triangles, placement }) {
  const { Manifold, Mesh } = opened;
  const mesh = new Mesh({
    numProp: 3,
    vertProperties: Float32Array.from(vertices),
    triVerts: Uint32Array.from(triangles),
  });
  mesh.merge();
  let solid;
  try {
    solid = new Manifold(mesh);
  } catch (fault) {
    return notASolid(fault);
  }
  const exact = new Map();
  for (let at = 0; at < vertices.length; at += 3) {
    exact.set(key(vertices, at), at);
  }
  const warped = solid.warpBatch((places, count) => {
    for (let at = 0; at < 3 * count; at += 3) {
      const from = exact.get(key(places, at));
      if (from !== undefined) {
        places.set(vertices.slice(from, from + 3), at);
      }
    }
  });
  solid.delete();
  if (!placement) {
    return warped;
  }
  const placed = warped.transform(placement);
  warped.delete();
  return placed;
}

function key(numbers, at) {
  return [numbers[at], numbers[at + 1], numbers[at + 2]].map((x) => Math.fround(x) + 0).join(' ');
}

/** Stands in for a mesh that the kernel refuses, so that the others are still measured. */
function notASolid(fault) {
  const empty = opened.Manifold.union([]);
  empty.status = () => String(fault.code ?? fault.message ?? fault);
  return empty;
}
