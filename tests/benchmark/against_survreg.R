# SPDX-License-Identifier: GPL-3.0-or-later
# One log-logistic curve by survreg and one stepwise estimate by survfit (Turnbull) a cross, on the
# counts given as CSV. Seeds of one interval are one row with a weight. Prints the processor seconds of the
# fits alone, reading and grouping not counted, and the time and scale of the first cross.
# survreg knows no share that never germinates: it fits the seed that came up, interval-censored.
suppressMessages(library(survival))
counts <- read.csv(commandArgs(trailingOnly = TRUE)[1])

rows_of <- function(tray) {
  tray <- tray[order(tray$day), ]
  before <- c(0, head(tray$day, -1))
  seen <- tray$germinated > 0
  up <- data.frame(from = before[seen], to = tray$day[seen], seeds = tray$germinated[seen])
  left <- tray$sown[1] - sum(tray$germinated)
  if (left > 0) up <- rbind(up, data.frame(from = max(tray$day), to = NA, seeds = left))
  up
}
crosses <- lapply(split(counts, counts$group), function(cross) {
  rows <- do.call(rbind, lapply(split(cross, cross$tray), rows_of))
  aggregate(seeds ~ from + to, transform(rows, to = ifelse(is.na(to), Inf, to)), sum)
})
fit_one <- function(rows) {
  open <- is.infinite(rows$to)
  up <- rows[!open, ]
  # survreg takes NA for an interval that begins at sowing.
  from <- ifelse(up$from == 0, NA, up$from)
  curve <- if (nrow(up) > 1)
    survreg(Surv(from, up$to, type = "interval2") ~ 1, weights = up$seeds, dist = "loglogistic")
  to <- ifelse(open, NA, rows$to)
  from_all <- ifelse(rows$from == 0, NA, rows$from)
  steps <- survfit(Surv(from_all, to, type = "interval2") ~ 1, weights = rows$seeds)
  list(curve = curve, steps = steps)
}
invisible(fit_one(crosses[[1]])) # the first call loads code
seconds <- sum(system.time(fits <- lapply(crosses, fit_one))[c("user.self", "sys.self")])
first <- fits[[1]]$curve
cat(sprintf("R: %d crosses, survreg + survfit: %.3f s of processor time\n", length(crosses), seconds))
cat(sprintf("R: first cross, scale %.2f days, shape %.3f, of the seed that came up\n",
            exp(coef(first)), 1 / first$scale))
