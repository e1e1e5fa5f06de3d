# SPDX-License-Identifier: MIT
# What R itself makes of the quantities that our rules compute for scouting walks, by other ways where there
# are any: integrals over the dispersion instead of a grid, and its own distributions. Printed as a table:
# what, counts (blank-separated) or nothing, three numbers that the question asks about, and the answer.
say <- function(what, counts, a, b, c, value)
  cat(sprintf("%s,%s,%.17g,%.17g,%.17g,%.12g\n", what, paste(counts, collapse = " "), a, b, c, value))

cat("what,counts,a,b,c,value\n")

walks <- list(c(3, 1, 7, 0, 4), c(4, 9, 2, 15, 0, 6, 3, 8, 1, 7), c(0, 0, 0, 0, 0), c(5, 5, 5, 5, 5),
  c(0, 0, 0, 0, 9), c(0, 1, 0, 2, 0, 0, 3, 0), rep(c(12, 31, 8, 22), 5), c(1, 0, 0))

# Chance that the mean lies below m: over ln k with a standard normal prior, given k a beta distribution.
below <- function(x, m) {
  total <- sum(x)
  n <- length(x)
  logweight <- function(lk) {
    k <- exp(lk)
    dnorm(lk, log = TRUE) + lk / 2 + lbeta(total + 0.5, n * k) +
      vapply(k, function(one) sum(lgamma(x + one) - lgamma(one)), 0)
  }
  top <- optimize(logweight, c(-8, 8), maximum = TRUE)$objective
  weight <- function(lk) exp(logweight(lk) - top)
  share <- function(lk) weight(lk) * pbeta(m / (m + exp(lk)), total + 0.5, n * exp(lk))
  area <- function(f) {
    pieces <- seq(-9, 9, by = 1)
    sum(mapply(function(from, to) integrate(f, from, to, rel.tol = 1e-10, abs.tol = 0)$value,
      head(pieces, -1), tail(pieces, -1)))
  }
  area(share) / area(weight)
}

for (x in walks) {
  for (p in c(0.025, 0.5, 0.975)) {
    found <- uniroot(function(lm) below(x, exp(lm)) - p, c(-14, 9), tol = 1e-10)$root
    say("posterior_quantile", x, p, 0, 0, exp(found))
  }
  for (m in c(1, 2.75, 5, 12)) say("posterior_above", x, m, 0, 0, 1 - below(x, m))
  if (length(unique(x)) > 1) {
    half <- qt(0.975, length(x) - 1) * sd(x) / sqrt(length(x))
    say("t_low", x, 0, 0, 0, max(0, mean(x) - half))
    say("t_high", x, 0, 0, 0, mean(x) + half)
  }
}

# None found: the mean that leaves one chance in twenty for so many empty frames, at k = 0.5.
for (n in c(3, 5, 10, 20)) {
  chance <- function(m) pnbinom(0, size = 0.5 * n, mu = n * m) - 0.05
  say("none_found_below", rep(0, n), 0, 0, 0, uniroot(chance, c(1e-6, 100), tol = 1e-12)$root)
}

# The plan centred on a threshold, after Wald, and how it fares: walks told one by one by their total.
lines <- function(threshold, k) {
  low <- threshold / 1.5
  larva <- function(high) log(high * (low + k) / (low * (high + k)))
  slope <- function(high) k * log((high + k) / (low + k)) / larva(high)
  high <- uniroot(function(h) slope(h) - threshold, c(threshold, 1000 * threshold), tol = 1e-12)$root
  log(9) / larva(high)
}

fares <- function(threshold, plank, mean, k, fewest, most) {
  h <- lines(threshold, plank)
  cells <- 0:(ceiling(threshold * most + h) + 1)
  going <- dnbinom(cells, size = fewest * k, mu = fewest * mean)
  stop <- dnbinom(cells, size = k, mu = mean)
  is.below <- 0
  is.above <- 1 - sum(going)
  stops <- 0
  for (n in fewest:most) {
    if (n > fewest) {
      before <- sum(going)
      going <- vapply(seq_along(cells), function(i) sum(going[1:i] * rev(stop[1:i])), 0)
      is.above <- is.above + before - sum(going)
      stops <- stops + before
    } else {
      stops <- fewest
    }
    high <- cells >= ceiling(threshold * n + h)
    low <- cells <= floor(threshold * n - h)
    is.above <- is.above + sum(going[high])
    is.below <- is.below + sum(going[low])
    going[high | low] <- 0
  }
  c(is.below, is.above, stops)
}

for (case in list(c(5, 1, 5, 1), c(5, 1, 3, 1), c(5, 1, 8, 0.5), c(5, 2, 6, 2), c(2.75, 1, 3, 1.5))) {
  found <- fares(case[1], case[2], case[3], case[4], 5, 20)
  say("table_below", case[4], case[1], case[2], case[3], found[1])
  say("table_above", case[4], case[1], case[2], case[3], found[2])
  say("table_stops", case[4], case[1], case[2], case[3], found[3])
}
