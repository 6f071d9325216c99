import type { Dialect } from "../../src/scorm/dialect.js";

/** A platform that notes every call and answers as it is told to. */
export class FakePlatform {
  readonly calls: string[] = [];
  readonly values = new Map<string, string>();
  readonly refused: RegExp | undefined;
  readonly api: Readonly<Record<string, (...words: string[]) => string>>;

  constructor(dialect: Dialect, { refused }: { readonly refused?: RegExp } = {}) {
    this.refused = refused;
    const answers: Record<string, (element: string, value?: string) => string> = {
      [dialect.get]: (element) =>
        element === dialect.count ? this.count : (this.values.get(element) ?? ""),
      [dialect.set]: (element, value) => {
        if (this.refused?.test(element)) return "false";
        this.values.set(element, value!);
        return "true";
      },
    };
    this.api = Object.fromEntries(
      [dialect.initialize, dialect.terminate, dialect.get, dialect.set, dialect.commit].map(
        (name) => [
          name,
          (...words: string[]) => {
            this.calls.push([name, ...words].join(" ").trim());
            if (this.refused?.test(name)) return "false";
            return answers[name]?.(words[0]!, words[1]) ?? "true";
          },
        ],
      ),
    );
  }

  get count(): string {
    const listed = [...this.values.keys()].filter((key) =>
      /^cmi\.interactions\.\d+\.id$/.test(key),
    );
    return String(listed.length);
  }

  /** The calls since the last time, without times. */
  since(): string[] {
    return this.calls.splice(0).filter((call) => !/time|latency/.test(call));
  }
}
