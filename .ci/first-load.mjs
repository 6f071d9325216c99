// What a page needs at once travels as few files. Left to the bundler, it is parted by which late part needs which
// module, too: two dozen files, each packed by itself.

/** A vite plugin: every module that an entry imports at once, by whatever way, goes into one file. */
export function firstLoad() {
  const first = new Set();

  function enter(id, info) {
    if (first.has(id)) return;
    first.add(id);
    for (const one of info(id)?.importedIds ?? []) enter(one, info);
  }

  // A package of many parts is imported as a whole and used by the piece: its pieces stay where they are needed.
  const isPiece = (id) => /\/node_modules\/d3-/.test(id);
  const name = (id) => (first.has(id) && !isPiece(id) ? "first" : null);

  return {
    name: "first-load",
    apply: "build",
    buildEnd() {
      for (const id of this.getModuleIds())
        if (this.getModuleInfo(id).isEntry) enter(id, (one) => this.getModuleInfo(one));
    },
    outputOptions(options) {
      return { ...options, codeSplitting: { groups: [{ debugName: "first", name }] } };
    },
  };
}
