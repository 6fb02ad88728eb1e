import type { BrokenManifest } from "./brokenManifest";

/** Mistakes in references: ids, resources, addresses, icons, the shared runtime. */
export const brokenReferences: readonly BrokenManifest[] = [
  {
    slip: "an id that is too long",
    find: /Guide\.Description/g,
    put: "Guide.DescriptionOfTheGuideButton",
    found: ["resid", "id"].map((key) => {
      const owner = key === "id" ? "bt:String" : "Description";
      return `The ${key} "Guide.DescriptionOfTheGuideButton" of <${owner}> has 33 characters; 1 to 32 are allowed.`;
    }),
  },
  {
    slip: "a resource defined twice",
    find: /<bt:Url id="Addin.Page.Url".*\/>/,
    put: "$&$&",
    found: ['The id "Addin.Page.Url" is the id of more than one element.'],
  },
  {
    slip: "two controls with one id",
    find: 'Group id="ExtensionSeason.Group"',
    put: 'Group id="ExtensionSeason.Guide"',
    found: ['The id "ExtensionSeason.Guide" is the id of more than one element.'],
  },
  {
    slip: "a reference to a missing resource",
    find: '<Label resid="Group.Label" />',
    put: '<Label resid="Group.Name" />',
    found: [
      'The resid "Group.Name" of <Label> is not defined in <bt:ShortStrings>.',
      '<bt:String id="Group.Label"> is not used.',
    ],
  },
  {
    slip: "a reference to the wrong kind of resource",
    find: '<Title resid="Guide.Label" />',
    put: '<Title resid="Guide.Description" />',
    found: ['The resid "Guide.Description" of <Title> is not defined in <bt:ShortStrings>.'],
  },
  {
    slip: "an unused resource",
    find: "<bt:Urls>",
    put: '$&<bt:Url id="Spare" DefaultValue="https://localhost:3000/addin.html" />',
    found: ['<bt:Url id="Spare"> is not used.'],
  },
  {
    slip: "a short text that is too long",
    find: 'DefaultValue="Function guide"',
    put: `DefaultValue="${"x".repeat(126)}"`,
    found: [
      'The value of <bt:String id="Guide.Label"> has 126 characters; 1 to 125 are allowed in <bt:ShortStrings>.',
    ],
  },
  {
    slip: "a long text that is too long",
    find: /"Open the guide: [^"]*"/,
    put: `"${"x".repeat(251)}"`,
    found: [
      'The value of <bt:String id="Guide.Description"> has 251 characters; 1 to 250 are allowed in <bt:LongStrings>.',
    ],
  },
  {
    slip: "an address without https",
    find: '"https://localhost:3000/functions.json"',
    put: '"http://localhost:3000/functions.json"',
    found: [
      'The address "http://localhost:3000/functions.json" of <bt:Url id="Functions.Metadata.Url"> is not https.',
    ],
  },
  {
    slip: "an address that is too long",
    find: /(<SupportUrl DefaultValue=")[^"]*/,
    put: `$1https://${"x".repeat(2041)}`,
    found: ["The address of <SupportUrl> has 2049 characters; 1 to 2048 are allowed."],
  },
  {
    slip: "a missing icon",
    find: '"https://localhost:3000/icons/icon-80.png"',
    put: '"https://localhost:3000/icons/icon-81.png"',
    found: ['The file "icons/icon-81.png" of <bt:Image id="Icon.80"> is not served.'],
  },
  {
    slip: "a missing icon size",
    find: '<bt:Image size="32" resid="Icon.32" />',
    put: "",
    found: ['<Icon> of <Group id="ExtensionSeason.Group"> lacks the size 32.'],
  },
  {
    slip: "an icon size that the host does not accept",
    find: 'size="64"',
    put: 'size="65"',
    found: [
      '<Icon> of <Group id="ExtensionSeason.Group"> has the size "65", which the host does not accept.',
    ],
  },
  {
    slip: "a page outside the runtime",
    find: /(<Page>\s*<SourceLocation resid=")Addin.Page.Url/,
    put: "$1Functions.Script.Url",
    found: [
      '<Page> names the resource "Functions.Script.Url", not the runtime\'s "Addin.Page.Url".',
    ],
  },
  {
    slip: "a function file outside the runtime",
    find: '<FunctionFile resid="Addin.Page.Url"',
    put: '<FunctionFile resid="Functions.Script.Url"',
    found: [
      '<FunctionFile> names the resource "Functions.Script.Url", not the runtime\'s "Addin.Page.Url".',
    ],
  },
  {
    slip: "a pane outside the runtime",
    find: /(<Action[^>]*>\s*<SourceLocation resid=")Addin.Page.Url/,
    put: "$1Functions.Script.Url",
    found: [
      '<Action> names the resource "Functions.Script.Url", not the runtime\'s "Addin.Page.Url".',
    ],
  },
  {
    slip: "a runtime with a short lifetime",
    find: 'lifetime="long"',
    put: 'lifetime="short"',
    found: ['<Runtime> has the lifetime "short", where "long" is required.'],
  },
  {
    slip: "overrides without Excel",
    find: 'Host xsi:type="Workbook"',
    put: 'Host xsi:type="Document"',
    found: [
      ...["Runtimes", "AllFormFactors", "DesktopFormFactor"].map(
        (name) => `<${name}> does not belong in <Host>.`
      ),
      '<VersionOverrides> lacks <Host xsi:type="Workbook">.',
    ],
  },
];
