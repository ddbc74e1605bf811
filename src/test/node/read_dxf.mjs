// Reads DXF files with a second independent library and prints what is in them as JSON.
//
//   node read_dxf.mjs FILE...
//
// For each file: the header's unit, the layers, and for each entity its type, layer, and either
// area (of a closed polyline, by its bulges), radius or text.
import { readFileSync } from 'node:fs';
import DxfParser from 'dxf-parser';

function area(vertices) {
  let sum = 0;
  vertices.forEach((from, i) => {
    const to = vertices[(i + 1) % vertices.length];
    sum += (from.x * to.y - to.x * from.y) / 2;
    const bulge = from.bulge ?? 0;
    if (bulge !== 0) {
      // Circular segment over chord c: r = c (1 + b2) / 4b, angle = 4 arctan b.
      const chord = Math.hypot(to.x - from.x, to.y - from.y);
      const radius = (chord * (1 + bulge * bulge)) / (4 * bulge);
      const angle = 4 * Math.atan(bulge);
      sum += (radius * radius * (angle - Math.sin(angle))) / 2;
    }
  });
  return sum;
}

function read(path) {
  const drawing = new DxfParser().parseSync(readFileSync(path, 'utf8'));
  return {
    units: drawing.header.$INSUNITS ?? null,
    layers: Object.keys(drawing.tables.layer.layers).sort(),
    entities: drawing.entities.map((entity) => ({
      type: entity.type,
      layer: entity.layer,
      closed: entity.shape ?? null,
      area: entity.vertices && entity.shape ? area(entity.vertices) : null,
      radius: entity.radius ?? null,
      text: entity.text ?? null,
    })),
  };
}

process.stdout.write(JSON.stringify(process.argv.slice(2).map(read)));
