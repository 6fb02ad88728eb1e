/**
 * The page in front of the add-in, in the place of Excel on the web. It speaks the message protocol of Microsoft's script
 * excel-web-16.00.js: it answers what the script asks, sends calls of worksheet functions, and applies requests of the object model to
 * a model of a workbook. It runs in the browser; `excelPageScript` makes one text of it.
 */
import { argumentsOf } from "../../../src/addin/calculationSheet/calculationFormula";
import { formulaCall } from "../../../src/addin/answers/formulaCall";
import { readAddress } from "../../../src/host/cellAddress";
import signatures from "../../contract/signatures.json";
import {
  emptyBook,
  ExcelError,
  workbookOf,
  type Member,
  type ModelBook,
  type ModelSheet,
} from "./workbookModel";

interface Message {
  readonly _messageType: number;
  readonly _actionType: number;
  readonly _actionName: string;
  readonly _conversationId: string;
  readonly _correlationId: number;
  readonly _data?: { readonly ArrayData?: readonly unknown[] };
}
interface PathInfo {
  readonly Id: number;
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: ArgumentInfo;
}
interface ArgumentInfo {
  readonly Arguments?: readonly unknown[];
  readonly ReferencedObjectPathIds?: readonly (number | null)[];
}
interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: ArgumentInfo;
  readonly QueryInfo?: { readonly Select?: readonly string[]; readonly Expand?: readonly string[] };
}
interface Body {
  readonly Actions?: readonly Action[];
  readonly ObjectPaths?: Readonly<Record<string, PathInfo>>;
}

/** A call as Excel sends it: the id of the function and one value for each parameter. */
export type SentCall = readonly [id: string, values: readonly unknown[]];
/** What came back of a call: its number, whether it succeeded, the value or the message, and the code of the error. */
export type CallResult = readonly [
  number: number,
  succeeded: boolean,
  answer: unknown,
  errorCode?: unknown,
];

/** What a test reaches in the page. */
export interface ExcelPage {
  /** Puts the add-in into the frame. */
  start(given: {
    readonly address: string;
    readonly appContext: object;
    readonly hostInfo: string;
    readonly frameHostInfo: string;
    readonly settings: Readonly<Record<string, unknown>>;
  }): void;
  /** Resolves when the script has registered for calls. */
  readonly isReady: Promise<void>;
  /** Sends calls in one message and resolves with what came back of each. */
  call(calls: readonly SentCall[], flags: number): Promise<CallResult[]>;
  readonly book: ModelBook;
  /** How this Excel sends a blank cell. Where it is given, formulas that are one call of a function are calculated by the add-in. */
  sendsBlankAs?: number | null;
  /** Whether a request asked to wait until no cell is being edited. */
  waitsForEditing: boolean;
}

const INVOKE = 1000;
const REGISTER = 1;
/** The flag of a request that waits until no cell is being edited. */
const WAIT_FOR_EDITING = 64;
/** The flags of a call whose error cells and formatted numbers arrive as objects. */
const RICH_VALUES = 4 + 8;
const RESULTS = ["SetInvocationArrayResults", "SetInvocationResults"];
/** Kinds of paths and actions, as the script numbers them. */
const PATH = { global: 1, service: 2, method: 3, property: 4, indexer: 5, reference: 6 };
const ACTION = { instantiate: 1, query: 2, method: 3, set: 4 };

/** The registration to which calls are sent. */
let listener: Message | undefined;
const waiting = new Map<number, (result: CallResult) => void>();
let frame: Window | undefined;
let origin = "";
let nextCall = 1;
let becomesReady: () => void = () => undefined;

function send(message: Message, data: unknown, responseType: number): void {
  const answer = {
    _messageType: 1,
    _actionName: message._actionName,
    _conversationId: message._conversationId,
    _correlationId: message._correlationId,
    _origin: location.origin,
    _data: data,
    _errorCode: 0,
    _responseType: responseType,
    _serializerVersion: 1,
  };
  frame?.postMessage(JSON.stringify(answer), origin);
}

/** A service of Microsoft's own, which takes any call. */
const SERVICE: Member = {};

/** The ranges that later requests may name, by the reference that Excel gives them. */
const references = new Map<string, Member>();

function instantiated(object: Member): unknown {
  if (object["isNullObject"] === true) return null;
  if (!("Address" in object)) return {};
  const reference = `range ${references.size + 1}`;
  references.set(reference, object);
  return { _ReferenceId: reference };
}

/** Applies the actions of one request to the workbook. */
function applied(body: Body): unknown[] {
  const { ObjectPaths = {}, Actions = [] } = body;
  const known = new Map<number, unknown>();
  const objectAt = (id: number): unknown => {
    if (!known.has(id)) known.set(id, made(ObjectPaths[id]));
    return known.get(id);
  };
  const argumentsOf = ({ Arguments = [], ReferencedObjectPathIds = [] }: ArgumentInfo = {}) =>
    Arguments.map((value, index) => {
      const path = ReferencedObjectPathIds[index];
      return typeof path === "number" && path !== 0 ? objectAt(path) : value;
    });
  const called = (object: unknown, name: string, info?: ArgumentInfo): unknown => {
    if (object === SERVICE) return undefined;
    const member = (object as Member)[name];
    if (typeof member !== "function") throw new ExcelError(`NotInModel:${name}`);
    return (member as (...values: unknown[]) => unknown)(...argumentsOf(info));
  };
  const made = (path: PathInfo | undefined): unknown => {
    if (path === undefined) throw new ExcelError("NoSuchPath");
    const parent = path.ParentObjectPathId === undefined ? {} : objectAt(path.ParentObjectPathId);
    switch (path.ObjectPathType) {
      case PATH.global:
        return root;
      case PATH.service:
        return SERVICE;
      case PATH.method:
        return called(parent, path.Name, path.ArgumentInfo);
      case PATH.property:
        if (!(path.Name in (parent as Member))) throw new ExcelError(`NotInModel:${path.Name}`);
        return (parent as Member)[path.Name];
      case PATH.indexer:
        return called(parent, "GetItem", path.ArgumentInfo);
      case PATH.reference:
        return references.get(path.Name);
      default:
        throw new ExcelError(`NotInModel:path of kind ${path.ObjectPathType}`);
    }
  };
  return Actions.map((action) => ({ ActionId: action.Id, Value: outcome(action) }));

  function outcome(action: Action): unknown {
    if (RESULTS.includes(action.Name)) return undefined;
    if (action.Name.startsWith("_")) return action.Name === "_GetEnabledFeatures" ? [3] : null;
    const object = objectAt(action.ObjectPathId);
    switch (action.ActionType) {
      case ACTION.instantiate:
        return instantiated(object as Member);
      case ACTION.query:
        return queried(object as Member, action.QueryInfo?.Select ?? []);
      case ACTION.method:
        return called(object, action.Name, action.ArgumentInfo) === undefined ? null : {};
      case ACTION.set:
        return void Reflect.set(object as object, action.Name, argumentsOf(action.ArgumentInfo)[0]);
      default:
        return null;
    }
  }
}

/** The asked properties of an object, and of each item where it is a collection. */
function queried(object: Member, selected: readonly string[]): unknown {
  if (object["isNullObject"] === true) return null;
  const answer: Record<string, unknown> = {};
  const ofItems = selected
    .filter((name) => /^items\//i.test(name))
    .map((name) => name.slice("items/".length));
  if ("Items" in object) {
    const names = ofItems.length > 0 ? ofItems : selected;
    answer["_Items"] = (object["Items"] as Member[]).map((item) => queried(item, ["Id", ...names]));
  }
  for (const name of selected) {
    const [first = "", ...rest] = name.split("/");
    const member = Object.keys(object).find((one) => one.toLowerCase() === first.toLowerCase());
    if (member === undefined || member === "Items") continue;
    answer[member] =
      rest.length === 0
        ? object[member]
        : {
            ...(answer[member] as object | undefined),
            ...(queried(object[member] as Member, [rest.join("/")]) as object),
          };
  }
  return answer;
}

const page: ExcelPage = {
  start: ({ address, appContext, hostInfo, frameHostInfo, settings }) => {
    Object.assign(page.book.settings, settings);
    context = appContext;
    const target = document.createElement("iframe");
    target.style.cssText = "width:400px;height:800px";
    const xdm = `conversation|id|${location.origin}|`;
    target.name = JSON.stringify({
      hostInfo: frameHostInfo,
      xdmInfo: xdm,
      serializerVersion: "1",
      baseFrameName: "x",
    });
    const hash = `&_xdm_Info=conversation|id|${encodeURIComponent(location.origin)}|&_serializer_version=1`;
    target.src = `${address}?_host_Info=${hostInfo}#${hash}`;
    document.body.append(target);
  },
  isReady: new Promise((resolve) => {
    becomesReady = resolve;
  }),
  call: (calls, flags) => {
    const numbers = calls.map(() => nextCall++);
    const results = numbers.map(
      (number) => new Promise<CallResult>((resolve) => waiting.set(number, resolve))
    );
    const entries = calls.map(([id, values], index) => {
      const message = [numbers[index], id, values, "[Book1]Clients!A1", flags];
      return [1, INVOKE, "", JSON.stringify(message), index, false];
    });
    if (listener) send(listener, { ArrayData: entries }, 1);
    return Promise.all(results);
  },
  book: emptyBook(),
  waitsForEditing: false,
};
let context: object = {};

/** Each parameter of a function: its name, and whether it is one value or a block. */
const PARAMETERS: Readonly<Record<string, readonly (readonly unknown[])[]>> = signatures;

/** An argument as Excel passes it: of cells what they show, of a blank cell what this Excel sends. */
function passedBy(argument: string, sheet: ModelSheet, isBlock: boolean): unknown {
  const written = argument.trim();
  if (written === "") return null;
  const block = blockBy(written, sheet);
  return isBlock ? block : block[0]?.[0];
}

function blockBy(written: string, sheet: ModelSheet): unknown[][] {
  const place = readAddress(written);
  if (!place) {
    const [value] = formulaCall(`=EXT.X(${written})`).values;
    return Array.isArray(value) ? (value as unknown[][]) : [[value]];
  }
  const { top, left, bottom, right } = place;
  return Array.from({ length: bottom - top + 1 }, (_row, row) =>
    Array.from({ length: right - left + 1 }, (_column, column) => {
      const cell = sheet.cells[`${top - 1 + row},${left - 1 + column}`];
      return cell === undefined ? page.sendsBlankAs : (cell.shows ?? cell.formula);
    })
  );
}

/** Calculates the formulas that are one call with values and cells, as Excel does once a request has written them. */
function calculateFormulas(): void {
  const { sendsBlankAs, book } = page;
  if (sendsBlankAs === undefined) return;
  for (const sheet of book.sheets) {
    for (const cell of Object.values(sheet.cells)) {
      const [, id, given] = /^=EXT\.([A-Z]+)\((.*)\)$/.exec(String(cell.formula)) ?? [];
      if (id === undefined || given === undefined || cell.shows !== undefined) continue;
      cell.shows = "#BUSY!";
      const { parts } = argumentsOf(given);
      const values = (PARAMETERS[id] ?? []).map(([, kind], index) =>
        passedBy(parts[index] ?? "", sheet, kind === "matrix")
      );
      void page.call([[id, values]], RICH_VALUES).then(([result]) => {
        cell.shows = shownBy(result?.[1] === true ? result[2] : { basicValue: "#VALUE!" });
      });
    }
  }
}

function shownBy(answer: unknown): string | number | boolean {
  if (Array.isArray(answer)) return shownBy((answer as unknown[][])[0]?.[0]);
  if (typeof answer !== "object" || answer === null) return answer as string | number | boolean;
  const { basicValue } = answer as { readonly basicValue?: string | number | boolean };
  return basicValue ?? "#VALUE!";
}
const root = workbookOf(page.book);

function answerRequest(message: Message, parts: readonly unknown[]): void {
  const [, , , , text] = parts;
  const body = JSON.parse(typeof text === "string" ? text : "{}") as Body;
  if ((Number(parts[6]) & WAIT_FOR_EDITING) !== 0) page.waitsForEditing = true;
  for (const { Name, ArgumentInfo } of body.Actions ?? []) {
    if (Name === "_SetOsfControlContainerReadyForCustomFunctions") becomesReady();
    if (!RESULTS.includes(Name)) continue;
    for (const result of (ArgumentInfo?.Arguments?.[0] ?? []) as CallResult[]) {
      waiting.get(result[0])?.(result);
      waiting.delete(result[0]);
    }
  }
  const isOfFunctions = (body.Actions ?? []).every(
    ({ Name }) => Name.startsWith("_") || RESULTS.includes(Name)
  );
  let answer: object;
  let status = 200;
  try {
    if (page.book.refuse !== undefined && !isOfFunctions) throw new ExcelError(page.book.refuse);
    answer = { Results: applied(body) };
    if (!isOfFunctions) calculateFormulas();
  } catch (thrown) {
    const code = thrown instanceof ExcelError ? thrown.code : String(thrown);
    status = 400;
    answer = { Error: { Code: code, Message: `Excel says ${code}.`, Location: "" } };
  }
  const data = [status, ["Content-Type", "application/json"], JSON.stringify(answer)];
  send(message, { Error: 0, Data: data }, 0);
}

addEventListener("message", ({ data, source, origin: from }: MessageEvent<string>) => {
  let message: Message;
  try {
    message = JSON.parse(data) as Message;
  } catch {
    return;
  }
  if (message._messageType !== 0) return;
  frame = source as Window;
  origin = from;
  if (message._actionName === "ContextActivationManager_getAppContextAsync") {
    send(message, context, 0);
    return;
  }
  if (message._actionType === REGISTER) {
    if (message._actionName === "richApiMessage") listener = message;
    send(message, { Error: 0 }, 0);
    return;
  }
  const parts = message._data?.ArrayData;
  if (parts) answerRequest(message, parts);
  else send(message, { Error: 0 }, 0);
});

Object.assign(globalThis, { excel: page });
