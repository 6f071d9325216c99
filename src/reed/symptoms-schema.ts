import * as v from "valibot";
import { freeText, id, label, wholeFrom } from "./file-fields.js";

const mostUnits = 1000;

const check = v.pipe(
  v.strictObject({ id, look: label, firstHelp: label }),
  v.description("an object with id, look and firstHelp"),
);

const cause = v.pipe(
  v.strictObject({
    what: id,
    is: v.pipe(v.picklist(["more", "less"]), v.description('"more" or "less"')),
  }),
  v.description('an object with what, a feature or ratio, and is, "more" or "less"'),
);

const help = v.pipe(
  v.strictObject({
    action: id,
    amount: wholeFrom(1, mostUnits),
    upTo: v.exactOptional(wholeFrom(1, mostUnits)),
  }),
  v.description("an object with action and amount"),
);

const helps = v.pipe(v.array(help), v.description("a list of actions, which may be empty"));

const symptom = v.pipe(
  v.strictObject({
    id,
    symptom: label,
    causes: v.pipe(v.array(cause), v.description("a list of causes, which may be empty")),
    otherCauses: v.pipe(v.array(label), v.description("a list of texts, which may be empty")),
    first: helps,
    firstNote: v.exactOptional(label),
    after: helps,
    afterNote: v.exactOptional(label),
  }),
  v.description("an object that describes one symptom"),
);

/** What a file of symptoms looks like; `readSymptoms` checks beyond it how it fits model and actions. */
export const symptomsSchema = v.pipe(
  v.strictObject({
    $comment: v.exactOptional(freeText),
    soundness: v.pipe(v.array(check), v.description("a list of checks, which may be empty")),
    symptoms: v.pipe(
      v.array(symptom),
      v.minLength(1),
      v.description("a list of at least one symptom"),
    ),
  }),
  v.description("an object that describes symptoms"),
);
