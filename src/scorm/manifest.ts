import { xmlText } from "./xml-text.js";

/** Which edition of the standard a package keeps to. */
export type ScormEdition = "1.2" | "2004";

/** What a manifest tells of a package. */
export interface PackageContent {
  /** Letters, digits, hyphens. */
  readonly name: string;
  readonly title: string;
  /** Each with its own page; files that all pages use are listed apart. */
  readonly lessons: readonly {
    readonly name: string;
    readonly title: string;
    readonly page: string;
  }[];
  readonly files: readonly string[];
  /** Whole per cents from which on a lesson is passed. */
  readonly mastery?: number;
}

/** What differs from edition to edition. */
interface Form {
  readonly spaces: string;
  readonly version: string;
  /** Name of the attribute that tells a page from a file. */
  readonly kind: string;
  readonly mastery: (perCent: number) => string;
  readonly sequencing: string;
}

const forms: Readonly<Record<ScormEdition, Form>> = {
  "1.2": {
    spaces: [
      'xmlns="http://www.imsproject.org/xsd/imscp_rootv1p1p2"',
      'xmlns:adlcp="http://www.adlnet.org/xsd/adlcp_rootv1p2"',
    ].join(" "),
    version: "1.2",
    kind: "adlcp:scormtype",
    mastery: (perCent) => `\n        <adlcp:masteryscore>${perCent}</adlcp:masteryscore>`,
    sequencing: "",
  },
  "2004": {
    spaces: [
      'xmlns="http://www.imsglobal.org/xsd/imscp_v1p1"',
      'xmlns:adlcp="http://www.adlnet.org/xsd/adlcp_v1p3"',
      'xmlns:imsss="http://www.imsglobal.org/xsd/imsss"',
    ].join(" "),
    version: "2004 4th Edition",
    kind: "adlcp:scormType",
    mastery: (perCent) => `
        <imsss:sequencing>
          <imsss:objectives>
            <imsss:primaryObjective objectiveID="score" satisfiedByMeasure="true">
              <imsss:minNormalizedMeasure>${perCent / 100}</imsss:minNormalizedMeasure>
            </imsss:primaryObjective>
          </imsss:objectives>
          <imsss:deliveryControls completionSetByContent="true" objectiveSetByContent="true"/>
        </imsss:sequencing>`,
    sequencing: `
      <imsss:sequencing>
        <imsss:controlMode choice="true" flow="true"/>
      </imsss:sequencing>`,
  },
};

/**
 * The manifest of a package, `imsmanifest.xml`: an item for every lesson, and every file of the package but itself.
 * Addresses are relative to it.
 *
 * Source  ADL SCORM 1.2 Content Aggregation Model (2001), 2.3; SCORM 2004 4th Edition Content Aggregation Model (2009), 3.4.
 */
export function manifestText(content: PackageContent, edition: ScormEdition): string {
  const form = forms[edition];
  return `<?xml version="1.0" encoding="UTF-8"?>
<manifest identifier="reedpoint-${content.name}" version="1" ${form.spaces}>
  <metadata>
    <schema>ADL SCORM</schema>
    <schemaversion>${form.version}</schemaversion>
  </metadata>
  <organizations default="lessons">
    <organization identifier="lessons">
      <title>${titleText(content.title)}</title>
${content.lessons.map((lesson) => itemText(lesson, content.mastery, form)).join("\n")}${form.sequencing}
    </organization>
  </organizations>
  <resources>
${content.lessons.map((lesson) => pageText(lesson, form)).join("\n")}
    <resource identifier="shared" type="webcontent" ${form.kind}="asset">
${content.files.map((file) => `      <file href="${xmlText(file)}"/>`).join("\n")}
    </resource>
  </resources>
</manifest>
`;
}

/** The published schema of SCORM 1.2 takes titles up to here. */
const mostTitle = 200;

function titleText(title: string): string {
  const signs = Array.from(title);
  return xmlText(signs.length > mostTitle ? `${signs.slice(0, mostTitle - 1).join("")}…` : title);
}

type LessonEntry = PackageContent["lessons"][number];

function itemText({ name, title }: LessonEntry, mastery: number | undefined, form: Form): string {
  const bar = mastery === undefined ? "" : form.mastery(mastery);
  return `      <item identifier="item-${name}" identifierref="page-${name}">
        <title>${titleText(title)}</title>${bar}
      </item>`;
}

function pageText({ name, page }: LessonEntry, { kind }: Form): string {
  return `    <resource identifier="page-${name}" type="webcontent" ${kind}="sco" href="${xmlText(page)}">
      <file href="${xmlText(page)}"/>
      <dependency identifierref="shared"/>
    </resource>`;
}
