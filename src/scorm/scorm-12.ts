import { clockSpan, clockTime } from "./cmi-time.js";
import type { Dialect } from "./dialect.js";
import type { Response } from "./marked-answer.js";

/** Most characters of a response (CMIFeedback). */
const mostResponse = 255;

/** The letter of an option: the first one is a. */
export function optionLetter(index: number): string {
  return "abcdefghijklmnopqrstuvwxyz0123456789"[index] ?? "9";
}

/** Letters with commas between, or `name=value` pairs; pairs that would make it too long are left out whole. */
function responseText(response: Response): string {
  if (response.kind !== "performance") return response.picked.map(optionLetter).join(",");
  return response.parts.reduce((text, [name, value]) => {
    const longer = `${text}${text === "" ? "" : ","}${name}=${value}`;
    return longer.length <= mostResponse ? longer : text;
  }, "");
}

/**
 * SCORM 1.2.
 *
 * Source  ADL SCORM Version 1.2, The SCORM Run-Time Environment (2001), data model of section 3.4.
 */
export const scorm12: Dialect = {
  api: "API",
  initialize: "LMSInitialize",
  terminate: "LMSFinish",
  get: "LMSGetValue",
  set: "LMSSetValue",
  commit: "LMSCommit",
  status: "cmi.core.lesson_status",
  success: "cmi.core.lesson_status",
  place: "cmi.core.lesson_location",
  packed: "cmi.suspend_data",
  count: "cmi.interactions._count",
  most: 4096,
  isDone: (status) => ["completed", "passed", "failed"].includes(status),
  statuses: ({ status }) => [["cmi.core.lesson_status", status]],
  reported: ({ score, attempt }, seconds) => [
    ...(attempt
      ? ([
          ["cmi.core.lesson_location", attempt.place],
          ["cmi.suspend_data", attempt.packed],
        ] as const)
      : []),
    ...(score === undefined
      ? []
      : ([
          ["cmi.core.score.min", "0"],
          ["cmi.core.score.max", "100"],
          ["cmi.core.score.raw", String(score)],
        ] as const)),
    ["cmi.core.session_time", clockSpan(seconds)],
    // Also once it is done: who comes back finds the answers.
    ["cmi.core.exit", "suspend"],
  ],
  interaction(index, { id, response, right, seconds, at }) {
    const element = `cmi.interactions.${index}`;
    return [
      [`${element}.id`, id],
      [`${element}.time`, clockTime(at)],
      [`${element}.type`, response.kind],
      [`${element}.student_response`, responseText(response)],
      [`${element}.result`, right ? "correct" : "wrong"],
      [`${element}.latency`, clockSpan(seconds)],
    ];
  },
};
