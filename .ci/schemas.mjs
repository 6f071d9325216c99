// The JSON Schemas of the files that a teacher can write, made from the schemas that read them.
import { mkdirSync, writeFileSync } from "node:fs";
import { toJsonSchema } from "@valibot/to-json-schema";
import { runnerImport } from "vite";

const schemas = [
  { file: "model.json", module: "src/reed/model-schema.ts", name: "modelSchema" },
  { file: "actions.json", module: "src/reed/actions-schema.ts", name: "actionsSchema" },
  { file: "qualities.json", module: "src/reed/qualities-schema.ts", name: "qualitiesSchema" },
  { file: "symptoms.json", module: "src/reed/symptoms-schema.ts", name: "symptomsSchema" },
  {
    file: "lesson.json",
    module: "src/lesson/front-matter-schema.ts",
    name: "frontMatterSchema",
  },
  ...["show", "predict", "aim", "choose", "order", "read", "stand-in", "claim"].map((block) => ({
    file: `lesson-${block}.json`,
    module: "src/lesson/block-schemas.ts",
    name: `${block === "stand-in" ? "standIn" : block}Schema`,
  })),
];

export async function writeSchemas(root) {
  mkdirSync(`${root}dist/schema`, { recursive: true });
  for (const { file, module, name } of schemas) {
    const { module: loaded } = await runnerImport(`${root}${module}`, { configFile: false });
    // Checks across fields (min below max, known features) have no words in JSON Schema; the readers make them.
    const schema = toJsonSchema(loaded[name], { errorMode: "ignore" });
    writeFileSync(`${root}dist/schema/${file}`, `${JSON.stringify(schema, null, 2)}\n`);
  }
}
