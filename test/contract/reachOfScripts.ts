/** Something that a security review looks for in a script. */
export interface Reach {
  readonly pattern: RegExp;
  /** What a script could do with it. */
  readonly why: string;
  /** Sample code that does it. */
  readonly sample: string;
}

/** A place in a script that contains such a thing for a good reason. */
export interface Allowance {
  /** The place, with enough code around it to match no other place. */
  readonly where: RegExp;
  readonly times: number;
  readonly why: string;
}

const CODE_MADE = "code made from text, which a content security policy blocks";
const CODE_LOADED = "code loaded later";
const NETWORK = "network";
const STORAGE = "storage of client data";
export const PAGE = "storage, network or code through the page";
const CLOCK = "the clock";
export const LATER = "results that come later";
const SLOW_TEXT = "text in the language of the user, slow to load";
const CHANCE = "chance";
const OTHERS = "messages to or from other pages";

const looked: readonly (readonly [pattern: RegExp, why: string, sample: string])[] = [
  [/\beval\s*\(/, CODE_MADE, "eval('1')"],
  [/\bFunction\s*\(/, CODE_MADE, "new Function('return 1')"],
  [/\bimport\s*\(/, CODE_LOADED, "import('./a.js')"],
  [/\bimportScripts\b/, CODE_LOADED, "importScripts('a.js')"],
  [/\bWebAssembly\b/, CODE_LOADED, "WebAssembly.instantiate(bytes)"],
  [/\b(Shared)?Worker\s*\(/, CODE_LOADED, "new Worker('a.js')"],
  [/\bserviceWorker\b/, CODE_LOADED, "navigator.serviceWorker.register('a.js')"],
  [/\bfetch\b/, NETWORK, "fetch('a')"],
  [/\bXMLHttpRequest\b/, NETWORK, "new XMLHttpRequest"],
  [/\bWebSocket\b/, NETWORK, "new WebSocket('ws:a')"],
  [/\bWebTransport\b/, NETWORK, "new WebTransport('a')"],
  [/\bEventSource\b/, NETWORK, "new EventSource('a')"],
  [/\bsendBeacon\b/, NETWORK, "navigator.sendBeacon('a')"],
  [/\bRTCPeerConnection\b/, NETWORK, "new RTCPeerConnection"],
  [/\b(Image|Audio)\s*[(;]/, NETWORK, "new Image().src='a'"],
  [/\.(src|srcset|srcdoc|action)\b/, NETWORK, "picture.src='a'"],
  [/https?:\/\//, "an address", "'https://example.com'"],
  [/\blocation\b/, "the address of the page, or a way to another", "location.href='a'"],
  [/\bnavigator\b/, "facts about the browser and its user", "navigator.userAgent"],
  [/\b(local|session)Storage\b/, STORAGE, "localStorage.setItem('a','b')"],
  [/\bindexedDB\b/, STORAGE, "indexedDB.open('a')"],
  [/\bcaches\b/, STORAGE, "caches.open('a')"],
  [/\bcookie(Store)?\b/, STORAGE, "document.cookie='a'"],
  [/\bOfficeRuntime\b/, "storage or dialogs of the host", "OfficeRuntime.storage.setItem('a')"],
  [/\bdocument\.[a-z]\w*/i, PAGE, "document.createElement('script')"],
  [/\.(inner|outer)HTML\b|\binsertAdjacentHTML\b/, PAGE, "place.innerHTML='<img>'"],
  [/\bpostMessage\b/, OTHERS, "parent.postMessage('a','*')"],
  [/\bBroadcastChannel\b/, OTHERS, "new BroadcastChannel('a')"],
  [/\bnew\s+Date\b(?!\s*\()/, CLOCK, "new Date"],
  [/\bnew\s+Date\s*\(\s*\)/, CLOCK, "new Date()"],
  [/(?<![.\w])Date\s*\(\s*\)/, CLOCK, "Date()"],
  [/\bDate\.now\b/, CLOCK, "Date.now()"],
  [/\bperformance\b/, CLOCK, "performance.now()"],
  [/\bTemporal\b/, CLOCK, "Temporal.Now.instant()"],
  [/\bIntl\b/, SLOW_TEXT, "new Intl.DateTimeFormat"],
  [/\bset(Timeout|Interval)\b/, LATER, "setTimeout(work,1)"],
  [/\brequest(AnimationFrame|IdleCallback)\b/, LATER, "requestAnimationFrame(work)"],
  [/\bMath\.random\b/, CHANCE, "Math.random()"],
  [/\bgetRandomValues\b/, CHANCE, "crypto.getRandomValues(array)"],
  [/\brandom(UUID|Bytes)\b/, CHANCE, "crypto.randomUUID()"],
];

/** Everything that the search looks for. */
export const REACHES: readonly Reach[] = looked.map(([pattern, why, sample]) => ({
  pattern,
  why,
  sample,
}));

/** Code of libraries that is in the functions and never runs here. */
export const BROUGHT_ALONG: readonly Allowance[] = [
  {
    where: /0===arguments\.length\?Date\.now\(\)/g,
    times: 1,
    why: "@date-fns/utc: a UTCDateMini without arguments, which src/calendar never makes",
  },
  {
    where: /!crypto\.getRandomValues&&!crypto\.randomBytes/g,
    times: 1,
    why: "decimal.js: looks for random numbers only if its setting crypto is on, which it is not",
  },
  {
    where: /this\.crypto\)if\(crypto\.getRandomValues\).{1,500}?1e7\*Math\.random\(\)/g,
    times: 1,
    why: "decimal.js: Decimal.random, never called",
  },
];

/** A script without the allowed places. */
export const beyond = (script: string, allowed: readonly Allowance[]): string =>
  allowed.reduce((text, { where }) => text.replace(where, "¤"), script);
