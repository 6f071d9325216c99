import { dataModels, type Edition } from "../tables/scorm-data-types.js";

/** A call as a spy before a platform noted it: what was said, what came back, and the platform's error number then. */
export interface SpiedCall {
  readonly call: string;
  readonly words: readonly string[];
  readonly answer: string;
  readonly error: string;
}

/** What a strict reader of the standard has against the calls of one sitting. */
export function strictFaults(calls: readonly SpiedCall[], edition: Edition): string[] {
  return [...orderFaults(calls, edition), ...valueFaults(calls, edition)];
}

function orderFaults(calls: readonly SpiedCall[], edition: Edition): string[] {
  const { initialize, terminate } = dataModels[edition];
  const names = calls.map(({ call }) => call);
  const count = (name: string): number => names.filter((one) => one === name).length;
  const end = names.indexOf(terminate);
  return [
    ...(names[0] === initialize ? [] : [`first call: ${names[0]}`]),
    ...(count(initialize) === 1 ? [] : [`${initialize} ${count(initialize)} times`]),
    ...(count(terminate) <= 1 ? [] : [`${terminate} ${count(terminate)} times`]),
    ...(end < 0 ? [] : names.slice(end + 1).map((name) => `after the end: ${name}`)),
  ];
}

function valueFaults(calls: readonly SpiedCall[], edition: Edition): string[] {
  const model = dataModels[edition];
  const types = new Map<string, string>();
  let listed = 0;
  return calls.flatMap(({ call, words, answer, error }) => {
    const [element = "", value = ""] = words;
    const told = `${call}(${words.join(", ")}) → ${answer}, ${error}`;
    if (call === model.get) {
      if (element.endsWith("interactions._count")) listed = Number(answer);
      return model.readable.test(element) ? [] : [`must not be read: ${told}`];
    }
    if (answer !== "true" || error !== "0") return [`refused: ${told}`];
    if (call !== model.set)
      return words.length === 1 && element === "" ? [] : [`words of its own: ${told}`];
    const [, form] = model.writable.find(([one]) => one.test(element)) ?? [];
    if (!form) return [`must not be written: ${told}`];
    const index = /^cmi\.interactions\.(\d+)\./.exec(element)?.[1];
    if (element.endsWith(".type")) types.set(index!, value);
    const own = model.response.test(element) ? model.responses[types.get(index!) ?? ""] : form;
    return [
      ...(form.test(value) && own?.test(value) ? [] : [`no such value: ${told}`]),
      ...(index === undefined || Number(index) === listed ? [] : [`not the next one: ${told}`]),
    ];
  });
}
