-- One who drags: the hem or the waist by a millimetre or so, tried, then a pause (PAUSE, ms, on average); one in forty is kept.
dofile("benchmarks/told.lua")
local keys = { "style.shifts.hem", "style.front%20waist", "style.back%20waist" }
local at = 0
local threads = 0

function setup(thread)
  thread:set("mine", threads)
  threads = threads + 1
end

function delay() return pause == 0 and 0 or math.random(0, 2 * pause) end

function request()
  -- each thread has its own makes, and what is kept goes round: no two change one make at once
  local half = math.floor(#makes / 2)
  local kept = math.random(40) == 1
  if kept then at = at + 1 end
  local make = makes[1 + (mine * half + (kept and at or math.random(half)) % half) % #makes]
  local body = keys[math.random(#keys)] .. "=" .. math.random(-20, 20) .. "%20mm"
  local headers = { ["Content-Type"] = "application/x-www-form-urlencoded", ["seal"] = os.getenv("SEAL"),
    ["Cookie"] = os.getenv("COOKIE") }
  return wrk.format("POST", make .. (kept and "/change" or "/try"), headers, body)
end

function done(summary, latency) tell("redraws", summary, latency) end
