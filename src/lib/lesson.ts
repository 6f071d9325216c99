export { parseLesson, type LessonOptions, type ParsedLesson } from "../lesson/parse-lesson.js";
export { checkLesson } from "../lesson/check-lesson.js";
export { type LessonProblem } from "../lesson/lesson-problem.js";
export type {
  AimBlock,
  Block,
  ChooseBlock,
  ChooseOption,
  ClaimBlock,
  ExerciseBlock,
  Lesson,
  LessonReed,
  OrderBlock,
  PredictBlock,
  ProseBlock,
  ReadBlock,
  ShowBlock,
  StandInBlock,
  Step,
  TextPlace,
} from "../lesson/lesson.js";
export type { ExerciseState, LessonState } from "../lesson/lesson-state.js";
