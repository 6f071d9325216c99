import type { Blend } from "../engine/blend.js";
import type { FeatureId, Values } from "../engine/model.js";
import type { LipPresetId } from "../acoustics/lip-presets.js";
import type { Layer } from "../reed/layer-names.js";

/** A place in a text, counted from 1. */
export interface TextPlace {
  readonly line: number;
  readonly column: number;
}

/** Where each field of a piece of YAML stands, by its path; the empty path is the piece itself. */
export type Places = Readonly<Record<string, TextPlace>>;

/** A reed, by name and by what differs from it. */
export interface LessonReed {
  /** A demo reed, which is invented; without it the all-round reed or the one the lesson starts with. */
  readonly reed?: string;
  /** In the model's units. */
  readonly values?: Values;
}

/** What every exercise may carry. */
interface Exercise extends LessonReed {
  readonly ask: string;
  /** What the author adds to the computed feedback. */
  readonly why?: string;
  readonly hints?: readonly [string, string, string];
  readonly places: Places;
}

/** What a student's recipe is held to. */
interface Held {
  readonly locked?: readonly FeatureId[];
  /** Cane does not go back. */
  readonly finished?: boolean;
  /** In shares; the distance that still counts as there. */
  readonly within: number;
}

export interface ShowBlock extends LessonReed {
  readonly kind: "show";
  readonly beside?: LessonReed;
  readonly caption?: string;
  readonly layers?: readonly Layer[];
  /** A feature whose place on the drawing is marked. */
  readonly place?: FeatureId;
  /** A kind of part. */
  readonly target?: string;
  readonly lips?: LipPresetId;
  /** Keys of the actions' cautions. */
  readonly cautions?: readonly string[];
  readonly places: Places;
}

export interface PredictBlock extends Exercise {
  readonly kind: "predict";
  /** The values after the change. */
  readonly change: Values;
}

export interface AimBlock extends Exercise, Held {
  readonly kind: "aim";
  readonly target: Blend;
  /** The kind of part, where the target has a name. */
  readonly part?: string;
  /** Most features that may be moved. */
  readonly mostFeatures?: number;
}

export interface ChooseOption {
  readonly text: string;
  readonly why: string;
  readonly right: boolean;
  readonly claim?: string;
}

export interface ChooseBlock extends Exercise {
  readonly kind: "choose";
  /** Answers that are kept name an option by its place here. */
  readonly options: readonly ChooseOption[];
  /** In which order a class sees them, as places in `options`; absent: as they stand. */
  readonly shown?: readonly number[];
}

export interface OrderBlock extends Exercise {
  readonly kind: "order";
  /** As the author lists them, which need not be a sensible order. */
  readonly actions: readonly string[];
}

export interface ReadBlock extends Exercise {
  readonly kind: "read";
  readonly at?: Blend;
  /** In shares, for each of the three. */
  readonly within: number;
}

export interface StandInBlock extends Exercise, Held {
  readonly kind: "stand-in";
  /** What is not as it should be, with the values it has instead. */
  readonly missing: Values;
}

export interface ClaimBlock {
  readonly kind: "claim";
  readonly says: string;
  readonly means: readonly string[];
  readonly places: Places;
}

/** Safe HTML. */
export interface ProseBlock {
  readonly kind: "prose";
  readonly html: string;
}

/** What a student answers. */
export type ExerciseBlock =
  | PredictBlock
  | AimBlock
  | ChooseBlock
  | OrderBlock
  | ReadBlock
  | StandInBlock;

export type Block = ProseBlock | ShowBlock | ExerciseBlock | ClaimBlock;

/** One idea, under one heading. */
export interface Step {
  readonly title: string;
  readonly line: number;
  readonly blocks: readonly Block[];
  /** For the presenter's view alone: safe HTML. */
  readonly notes: readonly string[];
  /** Whether every block of the step could be read: only then may it be played. */
  readonly sound: boolean;
}

/** A lesson file, read. */
export interface Lesson {
  readonly file: string;
  readonly title: string;
  readonly minutes: number;
  readonly goal?: string;
  /** Only these count; without it all features of the model do. */
  readonly features?: readonly FeatureId[];
  readonly reed?: string;
  readonly start?: Values;
  readonly steps: readonly Step[];
  /** Where the front matter's fields stand. */
  readonly places: Places;
}

/** Whether a block is one that a student answers. */
export function isExercise(block: Block): block is ExerciseBlock {
  return block.kind !== "prose" && block.kind !== "show" && block.kind !== "claim";
}
