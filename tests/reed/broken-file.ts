// A file as a tree that a test may break anywhere.
// eslint-disable-next-line typescript/no-explicit-any
export type Tree = Record<string, any>;

/** A way to break a file, and where the reader must notice it. */
export interface Break {
  readonly what: string;
  readonly change: (json: Tree) => unknown;
  /** Every path that is reported, in any order. */
  readonly paths: readonly string[];
  /** The break has consequences elsewhere that are reported too. */
  readonly also?: boolean;
}

/** A deep copy of a file, changed. */
export function copyOf(json: unknown, change: (json: Tree) => unknown): Tree {
  const copy = structuredClone(json) as Tree;
  change(copy);
  return copy;
}

/** Puts a value at a place such as `features.3.corners.high`. */
export function set(place: string, value: unknown): (json: Tree) => void {
  return (json) => {
    const [parent, key] = find(json, place);
    parent[key] = value;
  };
}

/** Takes away what stands at a place. */
export function remove(place: string): (json: Tree) => void {
  return (json) => {
    const [parent, key] = find(json, place);
    delete parent[key];
  };
}

function find(json: Tree, place: string): [Tree, string] {
  const keys = place.split(".");
  const last = keys.pop() ?? "";
  const parent = keys.reduce<Tree>((tree, key) => tree[key] as Tree, json);
  return [parent, last];
}

export function isDeeplyFrozen(value: unknown): boolean {
  if (typeof value !== "object" || value === null) return true;
  return Object.isFrozen(value) && Object.values(value).every(isDeeplyFrozen);
}
