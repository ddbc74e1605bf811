// Ends with code 0 when every package that the tests call can be found.
for (const name of ['manifold-3d/manifold.js', 'dxf-parser', 'occt-import-js']) {
  await import(name);
}
