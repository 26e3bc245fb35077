-- One who walks through the screens of a make, with a pause (PAUSE, ms, on average) at each.
dofile("benchmarks/told.lua")
local screens = { "", "/lay", "/print", "/sew", "/sew/all", "/versions", "/worn", "/numbers", "/remedies" }

function delay() return math.random(0, 2 * pause) end

function request()
  local n = math.random(#screens + 1)
  if n > #screens then return wrk.format("GET", "/") end
  return wrk.format("GET", makes[math.random(#makes)] .. screens[n])
end

function done(summary, latency) tell("screens", summary, latency) end
