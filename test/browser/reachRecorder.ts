/**
 * Puts in the place of everything by which a page can reach beyond itself (network, storage, clock, chance) something that notes its use
 * in `reached` and, but for the lesser ways into the network, does what it did before. It runs in the page before anything else, so it is text.
 */
export const REACH_RECORDER = `"use strict";
(() => {
  const reached = [];
  globalThis.reached = reached;
  const note = (name) => void reached.push(name);
  const stand = (holder, name, value) =>
    Object.defineProperty(holder, name, { value, configurable: true, writable: true });

  // what is called or made
  const network = [
    ...["XMLHttpRequest", "WebSocket", "WebTransport", "EventSource", "RTCPeerConnection"],
    ...["Image", "Audio", "Worker", "SharedWorker", "BroadcastChannel", "FontFace", "open"],
  ];
  for (const name of network) {
    stand(globalThis, name, function () {
      note(name);
      return {};
    });
  }
  const calls = {
    fetch: (address) => "fetch " + address,
    setTimeout: (work, wait) => "setTimeout " + wait,
    setInterval: () => "setInterval",
    requestAnimationFrame: () => "requestAnimationFrame",
    requestIdleCallback: () => "requestIdleCallback",
    queueMicrotask: () => "queueMicrotask",
    eval: () => "eval",
  };
  for (const [name, told] of Object.entries(calls)) {
    const before = globalThis[name];
    stand(globalThis, name, (...given) => {
      note(told(...given));
      return before(...given);
    });
  }
  const DateBefore = Date;
  const clock = new Proxy(DateBefore, {
    construct(target, given, made) {
      if (given.length > 0) return Reflect.construct(target, given, made);
      // A class made from Date begins with an empty one and then sets its time: it is given none, which would show in an answer.
      if (made !== clock) return Reflect.construct(target, [NaN], made);
      note("new Date()");
      return new target();
    },
    apply(target) {
      note("Date()");
      return target();
    },
  });
  stand(globalThis, "Date", clock);
  stand(DateBefore.prototype, "constructor", clock);
  const methods = [
    ["Date", DateBefore, ["now"]],
    ["Math", Math, ["random"]],
    ["Performance", Performance.prototype, ["now", "mark", "measure", "getEntries"]],
    ["Crypto", Crypto.prototype, ["getRandomValues", "randomUUID"]],
    ["Navigator", Navigator.prototype, ["sendBeacon"]],
    ["Clipboard", globalThis.Clipboard?.prototype ?? {}, ["read", "readText", "write", "writeText"]],
    ["Document", Document.prototype, ["write", "writeln", "open", "execCommand"]],
    ["Window", globalThis, ["postMessage"]],
    ["Element", Element.prototype, ["insertAdjacentHTML", "setHTMLUnsafe"]],
    ["History", History.prototype, ["pushState", "replaceState"]],
    ["Form", HTMLFormElement.prototype, ["submit", "requestSubmit"]],
    ["DateTimeFormat", Intl.DateTimeFormat.prototype, ["formatToParts"]],
  ];
  for (const [kind, holder, names] of methods) {
    for (const name of names) {
      const before = holder[name];
      if (before === undefined) continue;
      stand(holder, name, function (...given) {
        note(kind + "." + name);
        return before.apply(this, given);
      });
    }
  }
  const makeBefore = Document.prototype.createElement;
  stand(Document.prototype, "createElement", function (...given) {
    note("<" + String(given[0]).toLowerCase() + ">");
    return makeBefore.apply(this, given);
  });

  // what is read or set
  const properties = [
    [globalThis, ["localStorage", "sessionStorage", "indexedDB", "caches", "cookieStore"]],
    [globalThis, ["performance", "crypto", "navigator", "history", "name"]],
    [Document.prototype, ["cookie", "referrer"]],
    [Navigator.prototype, ["serviceWorker", "storage", "userAgent", "language", "connection"]],
    [Element.prototype, ["innerHTML", "outerHTML"]],
    [HTMLImageElement.prototype, ["src", "srcset"]],
    [HTMLScriptElement.prototype, ["src"]],
    [HTMLIFrameElement.prototype, ["src", "srcdoc"]],
    [HTMLLinkElement.prototype, ["href"]],
    [HTMLMediaElement.prototype, ["src"]],
  ];
  for (const [holder, names] of properties) {
    for (const name of names) {
      const before = Object.getOwnPropertyDescriptor(holder, name);
      if (before === undefined) continue;
      const get = before.get ?? (() => before.value);
      Object.defineProperty(holder, name, {
        configurable: true,
        get() {
          note(name);
          return get.call(this);
        },
        set(value) {
          note(name);
          before.set?.call(this, value);
        },
      });
    }
  }
})();`;
