import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { ReedModel } from "../engine/model.js";
import type { Lesson } from "../lesson/lesson.js";
import type { LessonProblem } from "../lesson/lesson-problem.js";
import { fileLesson } from "../lesson/progress.js";
import type { LessonFile } from "./bench-state.js";
import { loadLesson } from "./shipped-lessons.js";

/** What a lesson's own file needs to be read. */
export interface AskedFile {
  readonly file: LessonFile | undefined;
  readonly model: ReedModel;
}

/** How far a lesson is: "broken" is a file of which nothing can be played, "fault" a fault of its reader. */
export type SourceState = "coming" | "here" | "failed" | "unknown" | "broken" | "fault";

/** Brings the lesson that is asked for: a shipped one, or that of a file; readers of files come when the first is opened. */
export class LessonSource implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #id: string | undefined;
  #file: LessonFile | undefined;
  state: SourceState = "unknown";
  lesson: Lesson | undefined;
  /** Of a file. */
  problems: readonly LessonProblem[] = [];

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {}

  /** Asks for a lesson; the one that is here already stays. */
  ask(id: string | undefined, { file, model }: AskedFile): void {
    const isSame = id === this.#id && (id !== fileLesson || file === this.#file);
    if (isSame && this.state !== "failed") return;
    this.#id = id;
    this.#file = file;
    this.lesson = undefined;
    this.problems = [];
    this.state = "unknown";
    if (id === undefined) return;
    if (id !== fileLesson) void this.#bring(() => this.#shipped(id));
    else if (file) void this.#bring(() => this.#read(file, model));
  }

  async #bring(load: () => Promise<void>): Promise<void> {
    const [id, file] = [this.#id, this.#file];
    this.state = "coming";
    try {
      await load();
    } catch (cause) {
      console.warn("Reedpoint: a lesson could not be loaded", cause);
      if (id === this.#id && file === this.#file) this.state = "failed";
    }
    this.#host.requestUpdate();
  }

  async #shipped(id: string): Promise<void> {
    const lesson = await loadLesson(id);
    if (id !== this.#id) return;
    this.lesson = lesson;
    this.state = lesson ? "here" : "unknown";
  }

  async #read(file: LessonFile, model: ReedModel): Promise<void> {
    const { readLessonFile } = await import("./read-lesson-file.js");
    if (file !== this.#file) return;
    try {
      const { lesson, problems } = readLessonFile(file, model);
      this.lesson = lesson;
      this.problems = problems;
      this.state = lesson?.steps.some(({ sound }) => sound) ? "here" : "broken";
    } catch (cause) {
      console.error("Reedpoint: the reader of lesson files has failed", cause);
      this.state = "fault";
    }
  }
}
