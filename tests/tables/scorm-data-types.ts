// Which elements a lesson may read and write, and what may stand in them.
//
// SCORM 1.2: ADL, SCORM Version 1.2, The SCORM Run-Time Environment (2001), data model (3.4) and its data types; the
// strict forms of CMIString4096, CMIIdentifier, CMIFeedback, CMITime, CMITimespan and CMIDecimal are those that the
// remarks in scorm-again 3.4.3 (dist/esm/scorm12.js) cite from it, vocabularies likewise. From memory: CMITimespan has
// two to four digits of hours; the forms of a response by its type.
// SCORM 2004: ADL, SCORM 2004 4th Edition, Run-Time Environment (2009), data model (4.2), least lengths that every
// platform keeps taken as limits; forms as the same remarks cite them. From memory: the forms of a response by its type.

export type Edition = "1.2" | "2004";

interface DataModel {
  readonly initialize: string;
  readonly terminate: string;
  readonly get: string;
  readonly set: string;
  readonly commit: string;
  /** What may be read: nothing of it is about a person. */
  readonly readable: RegExp;
  /** What may be written, with its form. */
  readonly writable: readonly (readonly [element: RegExp, form: RegExp])[];
  /** The form of a response by its type. */
  readonly response: RegExp;
  readonly responses: Readonly<Record<string, RegExp>>;
}

const perCent = /^(100|\d{1,2})(\.\d+)?$/;
const printable = "[\\x20-\\x7e]";

const scorm12: DataModel = {
  initialize: "LMSInitialize",
  terminate: "LMSFinish",
  get: "LMSGetValue",
  set: "LMSSetValue",
  commit: "LMSCommit",
  readable: /^cmi\.(core\.(lesson_status|lesson_location)|suspend_data|interactions\._count)$/,
  writable: [
    [/^cmi\.core\.lesson_status$/, /^(passed|completed|failed|incomplete)$/],
    [/^cmi\.core\.lesson_location$/, new RegExp(`^${printable}{0,255}$`)],
    [/^cmi\.core\.score\.(raw|min|max)$/, perCent],
    [/^cmi\.core\.exit$/, /^(time-out|suspend|logout|)$/],
    [/^cmi\.core\.session_time$/, /^\d{2,4}:[0-5]\d:[0-5]\d(\.\d{1,2})?$/],
    [/^cmi\.suspend_data$/, new RegExp(`^${printable}{0,4096}$`)],
    [/^cmi\.interactions\.\d+\.id$/, /^[A-Za-z0-9_-]{1,255}$/],
    [/^cmi\.interactions\.\d+\.time$/, /^([01]\d|2[0-3]):[0-5]\d:[0-5]\d(\.\d{1,2})?$/],
    [
      /^cmi\.interactions\.\d+\.type$/,
      /^(true-false|choice|fill-in|matching|performance|sequencing|likert|numeric)$/,
    ],
    [/^cmi\.interactions\.\d+\.student_response$/, new RegExp(`^${printable}{0,255}$`)],
    [/^cmi\.interactions\.\d+\.result$/, /^(correct|wrong|unanticipated|neutral)$/],
    [/^cmi\.interactions\.\d+\.latency$/, /^\d{2,4}:[0-5]\d:[0-5]\d(\.\d{1,2})?$/],
  ],
  response: /\.student_response$/,
  responses: {
    choice: /^[a-z0-9](,[a-z0-9])*$/,
    sequencing: /^[a-z0-9](,[a-z0-9])*$/,
    performance: new RegExp(`^${printable}{0,255}$`),
  },
};

const span = /^P(?=\d|T\d)(\d+Y)?(\d+M)?(\d+D)?(T(?=\d)(\d+H)?(\d+M)?(\d+(\.\d{1,2})?S)?)?$/;
const shortIdentifier = "[\\w()+.:=@;$!*'%/#-]{1,250}";

const scorm2004: DataModel = {
  initialize: "Initialize",
  terminate: "Terminate",
  get: "GetValue",
  set: "SetValue",
  commit: "Commit",
  readable: /^cmi\.(completion_status|success_status|location|suspend_data|interactions\._count)$/,
  writable: [
    [/^cmi\.completion_status$/, /^(completed|incomplete|not attempted|unknown)$/],
    [/^cmi\.success_status$/, /^(passed|failed|unknown)$/],
    [/^cmi\.location$/, /^.{0,1000}$/],
    [/^cmi\.score\.(raw|min|max)$/, perCent],
    [/^cmi\.score\.scaled$/, /^(1|0(\.\d{1,7})?)$/],
    [/^cmi\.exit$/, /^(time-out|suspend|logout|normal|)$/],
    [/^cmi\.session_time$/, span],
    [/^cmi\.suspend_data$/, /^.{0,64000}$/s],
    [/^cmi\.interactions\.\d+\.id$/, /^(?!urn:)\S{1,4000}$/],
    [
      /^cmi\.interactions\.\d+\.timestamp$/,
      /^\d{4}-\d\d-\d\dT([01]\d|2[0-3]):[0-5]\d:[0-5]\d(\.\d{1,2}(Z|[+-]\d\d(:\d\d)?)?)?$/,
    ],
    [
      /^cmi\.interactions\.\d+\.type$/,
      /^(true-false|choice|fill-in|long-fill-in|matching|performance|sequencing|likert|numeric|other)$/,
    ],
    [/^cmi\.interactions\.\d+\.learner_response$/, /^.*$/],
    [/^cmi\.interactions\.\d+\.result$/, /^(correct|incorrect|unanticipated|neutral)$/],
    [/^cmi\.interactions\.\d+\.latency$/, span],
    [/^cmi\.interactions\.\d+\.description$/, /^(?!\{).{0,250}$/],
  ],
  response: /\.learner_response$/,
  responses: {
    choice: new RegExp(`^(${shortIdentifier}(\\[,\\]${shortIdentifier})*)?$`),
    sequencing: new RegExp(`^${shortIdentifier}(\\[,\\]${shortIdentifier})*$`),
    performance: new RegExp(
      `^(${shortIdentifier}\\[\\.\\][^[\\]]{0,250}(\\[,\\]${shortIdentifier}\\[\\.\\][^[\\]]{0,250})*)?$`,
    ),
  },
};

export const dataModels: Readonly<Record<Edition, DataModel>> = {
  "1.2": scorm12,
  "2004": scorm2004,
};
