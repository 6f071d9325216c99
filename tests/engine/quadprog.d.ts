declare module "quadprog" {
  /** All arrays count from 1: element 0 is not looked at. `Amat[variable][constraint]`; the first `meq` are equations. */
  export function solveQP(
    Dmat: number[][],
    dvec: number[],
    Amat: number[][],
    bvec: number[],
    meq: number,
  ): {
    readonly solution: readonly number[];
    readonly value: readonly number[];
    readonly message: string;
  };
}
