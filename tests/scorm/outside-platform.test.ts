import * as peer12 from "scorm-again/scorm12";
import * as peer2004 from "scorm-again/scorm2004";
import { describe, expect, test } from "vitest";
import { reduceLesson } from "../../src/lesson/lesson-state.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { scorm12 } from "../../src/scorm/scorm-12.js";
import { scorm2004 } from "../../src/scorm/scorm-2004.js";
import { ToldLesson } from "../../src/scorm/told-lesson.js";
import { dataModels } from "../tables/scorm-data-types.js";
import { answeredRun, idsOf, longLesson, madeAnswers, madeLesson } from "./made-lesson.js";
import { strictFaults, type SpiedCall } from "./strict-platform.js";

// scorm-again is laxer than the standard: what it takes is held against the standard's own table by a spy before it.
// Its types tell of a default export that its modules do not have.
type Calls = Readonly<Record<string, (...words: string[]) => unknown>>;

interface Peer {
  loadFromJSON(kept: object, element: string): void;
  readonly cmi: object;
}
type PeerClass = new (settings: object) => Peer;
const { Scorm12API } = peer12 as unknown as { readonly Scorm12API: PeerClass };
const { Scorm2004API } = peer2004 as unknown as { readonly Scorm2004API: PeerClass };

const editions = {
  "1.2": { dialect: scorm12, Platform: Scorm12API, lastError: "LMSGetLastError" },
  "2004": { dialect: scorm2004, Platform: Scorm2004API, lastError: "GetLastError" },
};

function platform(edition: keyof typeof editions, kept?: object) {
  const { Platform, lastError } = editions[edition];
  const peer = new Platform({ autocommit: false, logLevel: 5 });
  if (kept) peer.loadFromJSON(kept, "cmi");
  const calls: SpiedCall[] = [];
  const { initialize, terminate, get, set, commit } = dataModels[edition];
  const bare = peer as unknown as Calls;
  const spy = Object.fromEntries(
    [initialize, terminate, get, set, commit].map((call) => [
      call,
      (...words: string[]) => {
        const answer = String(bare[call]!(...words));
        calls.push({ call, words, answer, error: String(bare[lastError]!()) });
        return answer;
      },
    ]),
  );
  const keep = (): object => JSON.parse(JSON.stringify(peer.cmi)) as object;
  return { calls, spy, keep };
}

describe.each(["1.2", "2004"] as const)(
  "a lesson on a platform that others wrote, SCORM %s",
  (edition) => {
    const { dialect } = editions[edition];
    const begin = (spy: object, lesson = madeLesson, mastery?: number) =>
      new ToldLesson(
        lesson,
        { parent: { [dialect.api]: spy } },
        { dialect, model: bassoonModel, ...(mastery === undefined ? {} : { mastery }) },
      );

    test("two sittings: every call is right, and the second begins where the first ended", () => {
      const first = platform(edition);
      const told = begin(first.spy);
      for (const id of ["0.0", "0.1", "0.2"])
        told.work(answeredRun(told.attempt.run, id, madeAnswers[id]!), id);
      told.turn(1);
      told.work(
        reduceLesson(told.attempt.run, { type: "hint", exercise: "1.1" }, madeLesson),
        undefined,
      );
      told.hide();
      told.leave();
      told.hide();
      expect(strictFaults(first.calls, edition)).toEqual([]);

      const second = platform(edition, first.keep());
      const next = begin(second.spy, madeLesson, 30);
      expect(next.attempt).toEqual(told.attempt);
      for (const id of ["1.1", "1.2", "1.3"])
        next.work(answeredRun(next.attempt.run, id, madeAnswers[id]!), id);
      next.leave();
      expect(strictFaults(second.calls, edition)).toEqual([]);
      const written = second.calls
        .filter(({ call }) => call === dialect.set)
        .map(({ words }) => words.join(" "));
      expect(written).toContain(
        edition === "1.2" ? "cmi.core.lesson_status passed" : "cmi.success_status passed",
      );
    });

    test("a lesson far too long: every call is right", () => {
      const lesson = longLesson(60);
      const { calls, spy } = platform(edition);
      const told = begin(spy, lesson);
      const values = Object.fromEntries(
        bassoonModel.features.map(({ id, max }) => [id, max - 1 / 3]),
      );
      for (const id of idsOf(lesson))
        told.work(answeredRun(told.attempt.run, id, { kind: "aim", values }, lesson), id);
      told.leave();
      expect(strictFaults(calls, edition)).toEqual([]);
      expect(calls.length).toBeGreaterThan(60 * 8);
    });

    test("the strict reader sees what the platform lets pass", () => {
      const { initialize, terminate, get, set } = dataModels[edition];
      const fine = { answer: "true", error: "0" };
      const begun = { call: initialize, words: [""], ...fine };
      const wrong: SpiedCall[] = [
        { call: set, words: ["cmi.suspend_data", "x".repeat(64_001)], ...fine },
        { call: set, words: ["cmi.interactions.3.id", "a"], ...fine },
        { call: set, words: ["cmi.interactions.0.id", "a b"], ...fine },
        { call: set, words: ["cmi.core.student_name", "a"], ...fine },
        { call: get, words: ["cmi.core.student_name"], ...fine },
        { call: get, words: ["cmi.learner_id"], ...fine },
        { call: set, words: [dialect.place, "1"], answer: "false", error: "405" },
        begun,
      ];
      for (const one of wrong) expect(strictFaults([begun, one], edition)).toHaveLength(1);
      const end = { call: terminate, words: [""], ...fine };
      expect(strictFaults([begun, end, wrong[0]!, end], edition)).toHaveLength(4);
    });
  },
);
