import type { BrokenManifest } from "./brokenManifest";

/** Mistakes in the elements themselves: order, presence, identity, texts, requirements. */
export const brokenElements: readonly BrokenManifest[] = [
  {
    slip: "an element out of order",
    find: /(<Id>.*<\/Id>)\s*(<Version>.*<\/Version>)/,
    put: "$2$1",
    found: ["<Id> must come before <Version> in <OfficeApp>."],
  },
  {
    slip: "an element out of order inside the overrides",
    find: /(<Label resid="Group.Label" \/>)\s*(<Icon>[^]*?<\/Icon>)/,
    put: "$2$1",
    found: ["<Label> must come before <Icon> in <Group>."],
  },
  {
    slip: "an element in the wrong place",
    find: "<DefaultSettings>",
    put: "<DefaultSettings><Page />",
    found: ["<Page> does not belong in <DefaultSettings>.", "<Page> lacks <SourceLocation>."],
  },
  {
    slip: "a missing element",
    find: /<ProviderName>.*<\/ProviderName>/,
    put: "",
    found: ["<OfficeApp> lacks <ProviderName>."],
  },
  {
    slip: "a repeated element",
    find: /<DefaultLocale>.*<\/DefaultLocale>/,
    put: "$&$&",
    found: ["<DefaultLocale> occurs 2 times in <OfficeApp>, where once is allowed."],
  },
  {
    slip: "a missing namespace",
    find: '<Namespace resid="Functions.Namespace" />',
    put: "",
    found: [
      "<ExtensionPoint> lacks <Namespace>.",
      '<bt:String id="Functions.Namespace"> is not used.',
    ],
  },
  {
    slip: "a namespace with a space",
    find: 'DefaultValue="EXT"',
    put: 'DefaultValue="EXT 1"',
    found: [
      '<Namespace> "EXT 1" does not begin with a letter or has more than letters, digits, periods and underscores.',
    ],
  },
  {
    slip: "an id that is not a GUID",
    find: "05460465-19fe",
    put: "05460465-19f",
    found: ['<Id> "05460465-19f-41c0-944b-25bc8a1aec48" is not a GUID.'],
  },
  {
    slip: "a version in words",
    find: "<Version>0.1.0.0",
    put: "<Version>0.1.0-next",
    found: ['<Version> "0.1.0-next" is not one to four numbers of one to five digits.'],
  },
  {
    slip: "an unknown permission",
    find: ">ReadWriteDocument<",
    put: ">ReadWriteAll<",
    found: ['<Permissions> "ReadWriteAll" is not a permission of a task pane add-in.'],
  },
  {
    slip: "a name that is too long",
    find: /(<DisplayName DefaultValue=")[^"]*/,
    put: `$1${"x".repeat(126)}`,
    found: ["<DisplayName> has 126 characters; 1 to 125 are allowed."],
  },
  {
    slip: "an empty description",
    find: /<Description DefaultValue="[^"]*"/,
    put: '<Description DefaultValue=""',
    found: ["<Description> has 0 characters; 1 to 250 are allowed."],
  },
  {
    slip: "another kind of add-in",
    find: 'xsi:type="TaskPaneApp"',
    put: 'xsi:type="ContentApp"',
    found: ['The root is not <OfficeApp xsi:type="TaskPaneApp">.'],
  },
  {
    slip: "another host",
    find: 'Host Name="Workbook"',
    put: 'Host Name="Document"',
    found: ['<Hosts> lacks <Host Name="Workbook">.'],
  },
  {
    slip: "a missing requirement set",
    find: '<Set Name="SharedRuntime" MinVersion="1.1" />',
    put: "",
    found: ["<Requirements> lacks the set SharedRuntime 1.1."],
  },
  {
    slip: "a requirement set that is too new",
    find: 'Runtime" MinVersion="1.2"',
    put: 'Runtime" MinVersion="1.4"',
    found: ['<Set Name="CustomFunctionsRuntime"> states "1.4", where 1.2 is required.'],
  },
];
