import { isoSpan, isoTime } from "./cmi-time.js";
import type { Dialect, Report } from "./dialect.js";
import type { Response } from "./marked-answer.js";
import { optionLetter } from "./scorm-12.js";

/** Most characters of a description that every platform keeps. */
const mostDescription = 250;

function responseText(response: Response): string {
  return response.kind === "performance"
    ? response.parts.map((part) => part.join("[.]")).join("[,]")
    : response.picked.map(optionLetter).join("[,]");
}

/** The question, cut to length; a brace at the beginning would be read as the mark of a language. */
function description(ask: string): string {
  const text = ask.replace(/\s+/g, " ").replaceAll("{", "(").replaceAll("}", ")");
  if (text.length <= mostDescription) return text;
  // The cut may have gone through a sign that takes two units: then its first half goes, too.
  return `${text.slice(0, mostDescription - 1).replace(/[\uD800-\uDBFF]$/, "")}…`;
}

function success({ status }: Report): string {
  return status === "passed" || status === "failed" ? status : "unknown";
}

/**
 * SCORM 2004, 4th edition.
 *
 * Source  ADL SCORM 2004 4th Edition, Run-Time Environment (2009), data model of section 4.2.
 */
export const scorm2004: Dialect = {
  api: "API_1484_11",
  initialize: "Initialize",
  terminate: "Terminate",
  get: "GetValue",
  set: "SetValue",
  commit: "Commit",
  status: "cmi.completion_status",
  success: "cmi.success_status",
  place: "cmi.location",
  packed: "cmi.suspend_data",
  count: "cmi.interactions._count",
  most: 64_000,
  isDone: (status) => status === "completed",
  statuses: (report) => [
    ["cmi.completion_status", report.status === "incomplete" ? "incomplete" : "completed"],
    ["cmi.success_status", success(report)],
  ],
  reported: ({ score, attempt }, seconds) => [
    ...(attempt
      ? ([
          ["cmi.location", attempt.place],
          ["cmi.suspend_data", attempt.packed],
        ] as const)
      : []),
    ...(score === undefined
      ? []
      : ([
          ["cmi.score.min", "0"],
          ["cmi.score.max", "100"],
          ["cmi.score.raw", String(score)],
          ["cmi.score.scaled", String(score / 100)],
        ] as const)),
    ["cmi.session_time", isoSpan(seconds)],
    ["cmi.exit", "suspend"],
  ],
  interaction(index, { id, ask, response, right, seconds, at }) {
    const element = `cmi.interactions.${index}`;
    return [
      [`${element}.id`, id],
      [`${element}.type`, response.kind],
      [`${element}.timestamp`, isoTime(at)],
      [`${element}.learner_response`, responseText(response)],
      [`${element}.result`, right ? "correct" : "incorrect"],
      [`${element}.latency`, isoSpan(seconds)],
      [`${element}.description`, description(ask)],
    ];
  },
};
