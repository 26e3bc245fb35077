-- One who walks through the screens of a make, with a pause (PAUSE, ms, on average) at each.
local makes = {}
for line in io.lines(os.getenv("MAKES")) do makes[#makes + 1] = line end
local pause = tonumber(os.getenv("PAUSE"))
local screens = { "", "/lay", "/print", "/sew", "/sew/all", "/versions", "/worn", "/numbers", "/remedies" }
math.randomseed(os.time())

function delay() return math.random(0, 2 * pause) end

function request()
  local n = math.random(#screens + 1)
  if n > #screens then return wrk.format("GET", "/") end
  return wrk.format("GET", makes[math.random(#makes)] .. screens[n])
end

function done(summary, latency)
  local e = summary.errors
  io.write(string.format("  screens %d in %.0f s, 95%% within %.1f ms, slowest %.0f ms; wrong: status %d, lost %d, late %d\n",
    summary.requests, summary.duration / 1e6, latency:percentile(95) / 1000, latency.max / 1000,
    e.status, e.connect + e.read + e.write, e.timeout))
end
