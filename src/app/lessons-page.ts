import { LitElement, html, nothing, type PropertyValues } from "lit";
import type { ReedModel } from "../engine/model.js";
import { keptRun } from "../lesson/kept-run.js";
import type { Lesson } from "../lesson/lesson.js";
import { reduceLesson, type LessonState } from "../lesson/lesson-state.js";
import { mergedProgress } from "../lesson/merged-progress.js";
import { fileLesson, noProgress, type Progress } from "../lesson/progress.js";
import { reviewGap } from "../lesson/review.js";
import type { OpenLesson } from "../reed/bench.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { withLessons, type LessonCatalogue } from "../reed/lesson-catalogue.js";
import type { LengthUnit } from "../reed/units.js";
import { define } from "../widgets/define.js";
import type { LessonWorkedEvent, StepAskedEvent } from "../widgets/lesson-events.js";
import { look } from "../widgets/look.js";
import { BenchActionEvent } from "./bench-action-event.js";
import { reviewLessonId, type BenchAction, type LessonFile } from "./bench-state.js";
import { calendarDay } from "./calendar-day.js";
import { FileDrop } from "./file-drop.js";
import { LessonFileDrop, type FilePickedEvent } from "./lesson-file-drop.js";
import { LessonLock } from "./lesson-lock.js";
import { isRunning } from "./lesson-running.js";
import { LessonList, type LessonPickedEvent } from "./lesson-list.js";
import { LessonReview, type ReviewWorkedEvent } from "./lesson-review.js";
import { LessonSource } from "./lesson-source.js";
import { lessonsPageStyle } from "./lessons-page-style.js";
import { newReview } from "./new-review.js";
import type { PresentingChangedEvent } from "./lesson-presenter.js";
import { OpenLessonView } from "./open-lesson.js";
import { PageTitledEvent } from "./page-titled-event.js";
import { newPresenting, type Presenting } from "./presenting.js";
import { ProgressKeeper, type ProgressWish } from "./progress-keeper.js";
import { ProgressPanel, type ProgressWishedEvent } from "./progress-panel.js";
import { smallText } from "../widgets/small-text.js";
import { LessonProblems } from "./lesson-problems.js";

const mostLessonBytes = 1_000_000;

define("open-lesson", OpenLessonView);
define("lesson-list", LessonList);
define("lesson-review", LessonReview);
define("lesson-file-drop", LessonFileDrop);
define("lesson-problems", LessonProblems);
define("progress-panel", ProgressPanel);

/**
 * The lessons: their list, the one that is open, or a review.
 *
 * @fires bench-action - a lesson or a step is opened, an exercise is worked on, progress is taken in or erased
 */
export class LessonsPage extends LitElement {
  static override styles = [look, lessonsPageStyle];

  static override properties = {
    model: { attribute: false },
    open: { attribute: false },
    progress: { attribute: false },
    file: { attribute: false },
    presenting: { attribute: false },
    unit: { type: String },
    text: { attribute: false },
    told: { state: true },
  };

  declare model: ReedModel;
  /** The lesson that is open, and its step. */
  declare open: OpenLesson | undefined;
  declare progress: Progress | undefined;
  /** A lesson file that was opened. */
  declare file: LessonFile | undefined;
  declare presenting: Presenting | undefined;
  declare unit: LengthUnit;
  declare text: Catalogue;
  /** What happened without the student's doing: a file that was not opened, progress that is not kept any more. */
  declare told: string;

  readonly #source = new LessonSource(this);
  readonly #lock = new LessonLock();
  readonly #keeper = new ProgressKeeper(this, {
    onFound: (kept) => this.#found(kept),
    onEnded: (why) => (this.told = this.#words.lessons.keeping[why]),
  });
  readonly #dropped = new FileDrop(this, (file) => void this.#openFile(file));
  #shown: Lesson | undefined;
  #pair: string | undefined;
  #titles: readonly string[] = [];

  constructor() {
    super();
    this.unit = "mm";
    this.text = english;
    this.told = "";
  }

  get #words(): LessonCatalogue {
    return withLessons(this.text);
  }

  get #progress(): Progress {
    return this.progress ?? noProgress;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    const { open, file, model } = this;
    if (changed.has("open") || changed.has("file")) this.#source.ask(open?.id, { file, model });
    if (changed.has("progress") && changed.get("progress")) void this.#keeper.tell(this.#progress);
  }

  override updated(changed: PropertyValues<this>): void {
    this.#lock.hold(isRunning(this.open, this.progress, this.presenting));
    const before = this.#shown;
    this.#shown = this.open && this.#source.lesson;
    const isTurned = changed.get("open")?.step !== this.open?.step;
    const isOpened = this.#shown !== undefined && this.#shown !== before;
    // What was pressed is gone with its lesson.
    if (changed.get("open") && !this.open)
      this.renderRoot.querySelector<LessonList>("lesson-list")?.focus();
    if (isOpened || (changed.has("open") && this.open && isTurned)) this.#focusStep();
    this.#title();
  }

  /** The page is called after what is open in it. */
  #title(): void {
    const { open } = this;
    const review = open?.id === reviewLessonId ? [this.#words.lessons.review.title] : [];
    const { title, steps } = (open && this.#source.lesson) ?? {};
    const titles = title === undefined ? review : [steps?.[open!.step]?.title ?? "", title];
    if (titles.join() === this.#titles.join()) return;
    this.#titles = titles;
    this.dispatchEvent(new PageTitledEvent(titles));
  }

  override render() {
    return html`${this.told ? html`<p class="told" role="alert">${this.told}</p>` : nothing}
      <div class=${this.#dropped.isOver ? "dropping" : ""}>${this.#parts()}</div>`;
  }

  #parts() {
    const { open, text } = this;
    if (!open) return this.#list();
    const words = withLessons(text).lessons;
    if (open.id === reviewLessonId)
      return this.#progress.review ? this.#review() : this.#trouble(words.review.none(reviewGap));
    switch (this.#source.state) {
      case "here":
        return this.#lesson(open.id);
      case "coming":
        return html`<p class="soft">${words.loading}</p>`;
      case "failed":
        return this.#trouble(words.failed);
      case "fault":
        return this.#trouble(words.file.fault);
      case "broken":
        return html`${this.#back()}${this.#problems()}
          <p>${words.file.noLesson}</p>
          ${this.#drop(true)}`;
      case "unknown":
        return this.#trouble(open.id === fileLesson ? words.file.gone : words.unknown(open.id));
    }
  }

  #trouble(words: string) {
    return html`<p role="alert">${words}</p>
      ${this.#list()}`;
  }

  #list() {
    return html`<lesson-list
        .model=${this.model}
        .progress=${this.#progress}
        .text=${this.#words}
        @lesson-picked=${({ id, title }: LessonPickedEvent) => this.#go({ id, step: 0 }, title)}
        @review-asked=${this.#openReview}
      ></lesson-list>
      <div class="shelf">${this.#keeping(false)} ${this.#drop(false)}</div>`;
  }

  #keeping(brief: boolean) {
    return html`<progress-panel
      ?brief=${brief}
      .progress=${this.#progress}
      .keeping=${this.#keeper.keeping}
      .text=${this.#words}
      @progress-wished=${this.#onWish}
    ></progress-panel>`;
  }

  #drop(again: boolean) {
    return html`<lesson-file-drop
      ?again=${again}
      .text=${this.#words}
      @file-picked=${({ file }: FilePickedEvent) => this.#openFile(file)}
    ></lesson-file-drop>`;
  }

  #back(slot?: "end") {
    const words = this.#words.lessons;
    return html`<button
      class="back"
      slot=${slot ?? nothing}
      @click=${() => this.#go(undefined, words.list)}
    >
      ${words.back}
    </button>`;
  }

  #problems() {
    return html`<lesson-problems
      .file=${this.file?.name ?? ""}
      .problems=${this.#source.problems}
      .text=${this.#words}
    ></lesson-problems>`;
  }

  #lesson(id: string) {
    const lesson = this.#source.lesson!;
    const isFile = id === fileLesson;
    return html`${this.#back()} ${this.presenting ? nothing : this.#presentButton()}
      ${isFile ? this.#problems() : nothing}
      <open-lesson
        .lesson=${lesson}
        .run=${this.#run(lesson)}
        .faulty=${this.#source.problems.length > 0}
        .presenting=${this.presenting}
        .model=${this.model}
        .unit=${this.unit}
        .text=${this.#words}
        @lesson-worked=${this.#onWorked}
        @step-asked=${({ step, says }: StepAskedEvent) => this.#go({ id, step }, says)}
        @presenting-changed=${({ presenting }: PresentingChangedEvent) =>
          this.#send({ type: "presenting-set", presenting })}
        >${this.#back("end")}</open-lesson
      >
      <div class="shelf">${isFile ? this.#drop(true) : this.#keeping(true)}</div>`;
  }

  #presentButton() {
    const words = this.#words.lessons.presenter;
    return html`<button
      class="back"
      title=${words.beginHelp}
      @click=${() => this.#send({ type: "presenting-set", presenting: this.#newPair() })}
    >
      ${words.begin}
    </button>`;
  }

  /** The class's window that was opened before serves again. */
  #newPair(): Presenting {
    const presenting = newPresenting(this.#pair);
    this.#pair = presenting.id;
    return presenting;
  }

  #review() {
    const { open } = this;
    return html`${this.#back()}
      <lesson-review
        .review=${this.#progress.review}
        .at=${open!.step}
        .model=${this.model}
        .unit=${this.unit}
        .text=${this.#words}
        @review-worked=${({ review, says }: ReviewWorkedEvent) =>
          this.#setProgress({ ...this.#progress, review }, says)}
        @step-asked=${({ step, says }: StepAskedEvent) =>
          this.#go({ id: reviewLessonId, step }, says)}
      >
        ${this.#back("end")}
      </lesson-review>`;
  }

  #run(lesson: Lesson): LessonState {
    const { id, step } = this.open!;
    const run = keptRun(lesson, this.#progress.runs[id]);
    return reduceLesson(run, { type: "step", step }, lesson);
  }

  #onWorked({ run, says, handedIn }: LessonWorkedEvent): void {
    const { id } = this.open!;
    const dated = handedIn === undefined ? run : { ...run, day: calendarDay(new Date()) };
    this.#send({ type: "lesson-worked", id, run: dated, says });
  }

  readonly #openReview = async (): Promise<void> => {
    const { model } = this;
    const says = this.#words.lessons.review.title;
    try {
      const review = await newReview(this.#progress, model, calendarDay(new Date()));
      if (review && review !== this.#progress.review)
        this.#setProgress({ ...this.#progress, review }, "");
      this.#go({ id: reviewLessonId, step: 0 }, says);
    } catch (cause) {
      console.warn("Reedpoint: the review could not be loaded", cause);
      this.told = this.#words.lessons.review.failed;
    }
  };

  readonly #onWish = ({ wish }: ProgressWishedEvent): void => void this.#fulfil(wish);

  async #fulfil(wish: ProgressWish): Promise<void> {
    const { progress, says } = await this.#keeper.fulfil(wish, this.#progress);
    this.#setProgress(progress, says === undefined ? "" : this.#words.lessons.keeping[says]);
  }

  async #openFile(file: File): Promise<void> {
    const words = this.#words.lessons.file;
    const read = await smallText(file, mostLessonBytes);
    this.told = "fault" in read ? words[read.fault](file.name) : "";
    if ("fault" in read) return;
    this.#send({
      type: "lesson-file-opened",
      file: { name: file.name, text: read.text },
      says: "",
    });
    window.scrollTo(0, 0);
  }

  /** Where another page has erased everything, what this one holds goes, too, and is told. */
  #found(kept: Progress): void {
    const isErased = (kept.born ?? 0) > (this.#progress.born ?? 0);
    const isLoss = isErased && Object.keys(this.#progress.runs).length > 0;
    const { erased } = this.#words.lessons.keeping;
    if (isLoss) this.told = erased;
    this.#setProgress(mergedProgress(this.#progress, kept), "");
  }

  #setProgress(progress: Progress, says: string): void {
    this.#send({ type: "progress-set", progress, says });
  }

  #go(lesson: OpenLesson | undefined, says: string): void {
    const opened = lesson ? { lesson } : {};
    this.told = "";
    // Who leaves a lesson has ended presenting it; the class's window waits for the next one.
    if (!lesson && this.presenting) this.#send({ type: "presenting-set", presenting: undefined });
    this.#send({ type: "lesson-opened", ...opened, says });
    window.scrollTo(0, 0);
  }

  #send(action: BenchAction): void {
    this.dispatchEvent(new BenchActionEvent(action));
  }

  #focusStep(): void {
    const parts = "open-lesson, lesson-review";
    void this.updateComplete.then(() =>
      this.renderRoot.querySelector<OpenLessonView | LessonReview>(parts)?.focus(),
    );
  }
}
