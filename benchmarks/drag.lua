-- One who drags: the hem or the waist by a millimetre or so, tried, then a pause (PAUSE, ms, on average); one in forty is kept.
local makes = {}
for line in io.lines(os.getenv("MAKES")) do makes[#makes + 1] = line end
local pause = tonumber(os.getenv("PAUSE"))
local keys = { "style.shifts.hem", "style.front%20waist", "style.back%20waist" }
math.randomseed(os.time())

function delay() return pause == 0 and 0 or math.random(0, 2 * pause) end

function request()
  local make = makes[math.random(#makes)]
  local kept = math.random(40) == 1
  local body = keys[math.random(#keys)] .. "=" .. math.random(-20, 20) .. "%20mm"
  local headers = { ["Content-Type"] = "application/x-www-form-urlencoded", ["seal"] = os.getenv("SEAL"),
    ["Cookie"] = os.getenv("COOKIE") }
  return wrk.format("POST", make .. (kept and "/change" or "/try"), headers, body)
end

function done(summary, latency)
  local e = summary.errors
  io.write(string.format("  redraws %d in %.0f s, 95%% within %.1f ms, slowest %.0f ms; wrong: status %d, lost %d, late %d\n",
    summary.requests, summary.duration / 1e6, latency:percentile(95) / 1000, latency.max / 1000,
    e.status, e.connect + e.read + e.write, e.timeout))
end
