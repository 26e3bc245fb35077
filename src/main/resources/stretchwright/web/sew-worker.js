// Answers for the sewing of one make when the program does not. It keeps the pages of that make's plan and nothing else.
"use strict";
const SEWING = new URL(self.registration.scope).pathname;
const STORE = "stretchwright " + SEWING;
const LIST = SEWING + "/pages.json";
const PATIENCE = 5000; // ms until a silent connection counts as none

// a page that is not the one that was asked for, such as that of a pass phrase, is not kept
const keepable = answer => answer.ok && !answer.redirected && answer.type === "basic";

const listed = async () => {
  const kept = await (await caches.open(STORE)).match(LIST);
  return kept ? kept.json() : { plan: "", pages: [] };
};

// all of them or none: half a plan would end in the middle of a seam
const fill = async () => {
  const answer = await fetch(LIST);
  if (!keepable(answer)) throw new Error("no list");
  const pages = (await answer.clone().json()).pages;
  const fetched = [];
  for (const page of pages) {
    const got = await fetch(page);
    if (!keepable(got)) throw new Error("not kept: " + page);
    // read at once: an answer that is only begun holds one of the browser's few lines
    fetched.push([page, new Response(await got.blob(), { headers: got.headers })]);
  }
  await caches.delete(STORE);
  const cache = await caches.open(STORE);
  for (const [page, got] of fetched) await cache.put(page, got);
  await cache.put(LIST, answer);
};

self.addEventListener("install", e => e.waitUntil(fill().then(() => self.skipWaiting())));
self.addEventListener("activate", e => e.waitUntil(self.clients.claim()));

// an open page says of which plan it is
self.addEventListener("message", e => e.waitUntil(
  listed().then(l => l.plan === e.data ? null : fill()).catch(() => null)));

const answered = async request => {
  try {
    const answer = await fetch(request, { signal: AbortSignal.timeout(PATIENCE) });
    const path = new URL(request.url).pathname;
    if (keepable(answer) && (await listed()).pages.includes(path)) {
      await (await caches.open(STORE)).put(path, answer.clone());
    }
    return answer;
  } catch (none) {
    const kept = await (await caches.open(STORE)).match(new URL(request.url).pathname);
    if (kept) return kept;
    throw none;
  }
};

self.addEventListener("fetch", e => {
  if (e.request.method === "GET" && new URL(e.request.url).origin === self.location.origin) e.respondWith(answered(e.request));
});
