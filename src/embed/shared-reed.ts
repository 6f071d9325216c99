import type { BenchAction, BenchState } from "../app/bench-state.js";
import { handled, pointHandlers, startState } from "../app/reduce-reed.js";
import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import { bassoonModel } from "../reed/bassoon.js";
import type { Bench } from "../reed/bench.js";
import { newBench } from "../reed/new-bench.js";

type Reduce = (state: BenchState, action: BenchAction) => BenchState;

/** What a page says of a reed before anybody has touched it. */
export interface Given {
  /** The name of a reed; empty for the all-round reed. */
  readonly reed: string;
  /** Readings; undefined for those of the all-round reed. */
  readonly values: Values | undefined;
  /** The features that count; empty: all. */
  readonly features: readonly FeatureId[];
  readonly model: ReedModel;
  readonly locked: Bench["locked"];
  readonly layers: Bench["layers"];
  readonly target: string;
  readonly aim: Bench["aim"];
}

/** One recipe, with all elements that show it: the owner of the one state. */
export class SharedReed {
  state: BenchState = startState(bassoonModel);
  /** The model with all its features: a drawing needs those as well that do not count. */
  model: ReedModel = bassoonModel;
  /** What it began with. */
  #begun: BenchState = this.state;
  readonly #shows = new Set<() => void>();
  #reduce: Reduce = (state, action) => handled(pointHandlers, state, action);

  /** An element that can do more than move the reed brings the code for it. */
  learn(reduce: Reduce): void {
    this.#reduce = reduce;
  }

  /** Calls back after every change until the returned function is called. */
  subscribe(show: () => void): () => void {
    this.#shows.add(show);
    return () => this.#shows.delete(show);
  }

  /** Whether the action has changed anything. */
  dispatch(action: BenchAction): boolean {
    const next = this.#reduce(this.state, action);
    if (next === this.state) return false;
    this.#become(next);
    return true;
  }

  /** Begins anew with what the page says. */
  start({ model, features, reed, values, aim, ...rest }: Given): void {
    this.model = model;
    const counted = onlyFeatures(model, features);
    const fresh = newBench(counted);
    const kept = values && only(values, counted);
    const finished = reed !== "";
    const bench = { ...fresh, ...rest, reed, finished, values: kept ?? fresh.values };
    this.open(startState(counted, aim ? { ...bench, aim } : bench));
  }

  /** Goes on with a state from elsewhere, of the same model. */
  open(state: BenchState): void {
    this.#begun = state;
    this.#become(state);
  }

  /** Begins anew: the user's changes are gone. */
  again(): void {
    this.#become(this.#begun);
  }

  /** How the bench is looked at, as the page says: no step of anybody's. */
  look({ aim, ...change }: Pick<Given, "target" | "aim" | "layers" | "locked">): void {
    const all = { ...change, ...(aim ? { aim } : {}) };
    this.#begun = withBench(this.#begun, all);
    this.#become(withBench(this.state, all));
  }

  #become(state: BenchState): void {
    this.state = state;
    for (const show of this.#shows) show();
  }
}

function withBench(state: BenchState, change: Partial<Bench>): BenchState {
  const { present } = state;
  return { ...state, present: { ...present, bench: { ...present.bench, ...change } } };
}

function only(values: Values, { features }: ReedModel): Values {
  return Object.fromEntries(
    features.flatMap(({ id }) => (values[id] === undefined ? [] : [[id, values[id]]])),
  );
}

const parts = new WeakMap<ReedModel, Map<string, ReedModel>>();

/** A model of some features alone; the same object for the same question, because maps are kept by it. */
export function onlyFeatures(model: ReedModel, wanted: readonly FeatureId[]): ReedModel {
  if (wanted.length === 0) return model;
  const known = parts.get(model) ?? new Map<string, ReedModel>();
  parts.set(model, known);
  const key = wanted.join(" ");
  const has = (id: FeatureId): boolean => wanted.includes(id);
  const features = model.features.filter(({ id }) => has(id));
  const part = known.get(key) ?? {
    ...model,
    groups: model.groups.filter(({ id }) => features.some(({ group }) => group === id)),
    features,
    ratios: model.ratios.filter((ratio) => has(ratio.of) && has(ratio.to)),
  };
  known.set(key, part);
  return part;
}
