-- What both drag.lua and walk.lua need: the makes, and what is told at the end.
makes = {}
for line in io.lines(os.getenv("MAKES")) do makes[#makes + 1] = line end
pause = tonumber(os.getenv("PAUSE"))
math.randomseed(os.time())

function tell(what, summary, latency)
  local e = summary.errors
  io.write(string.format("  %s %d in %.0f s, 95%% within %.1f ms, slowest %.0f ms; wrong: status %d, lost %d, late %d\n",
    what, summary.requests, summary.duration / 1e6, latency:percentile(95) / 1000, latency.max / 1000,
    e.status, e.connect + e.read + e.write, e.timeout))
end
