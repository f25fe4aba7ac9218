# The fits and tests of TrialFitBench in R, on the same files: Rscript bench/trials.R REFERENCE WORK.
# Prints the median processor time of each in ms and what it found.
suppressPackageStartupMessages({
  library(lme4)
  library(lmerTest)
  library(pbkrtest)
})
arguments <- commandArgs(TRUE)
reference <- arguments[1]
work <- arguments[2]

# proc.time counts in whole milliseconds, so short fits are timed several at once.
measure <- function(name, runs, task, found, each = 5) {
  for (i in 1:3) task()
  times <- numeric(runs)
  for (i in seq_len(runs)) {
    gc()
    start <- proc.time()
    for (j in seq_len(each)) result <- task()
    used <- proc.time() - start
    times[i] <- 1000 * (used[["user.self"]] + used[["sys.self"]]) / each
  }
  cat(sprintf("%s,%.3f,%.6f\n", name, median(times), found(result)))
}
logLikelihood <- function(fit) as.numeric(logLik(fit))

oats <- read.csv(file.path(reference, "oats_splitplot", "data.csv"))
oats$nitro <- factor(oats$nitro)
measure("splitPlot72", 15, function() {
  lme4::lmer(yield ~ Variety * nitro + (1 | Block / Variety), oats)
}, logLikelihood)

sleep <- read.csv(file.path(reference, "sleepstudy", "data.csv"))
sleep$Subject <- factor(sleep$Subject)
measure("slopes180", 15, function() {
  lme4::lmer(Reaction ~ Days + (Days | Subject), sleep)
}, logLikelihood)

season <- read.csv(file.path(reference, "speed_synthetic", "data.csv"))
season$date <- factor(season$date)
season$yard <- factor(season$yard)
measure("season2880", 9, function() {
  lme4::lmer(logK ~ trt * date + (1 | yard) + (1 | yard:trt) + (1 | yard:date)
    + (1 | yard:trt:date), season)
}, logLikelihood, 1)

means <- read.csv(file.path(work, "means.csv"))
means$date <- factor(means$date)
means$yard <- factor(means$yard)
means$trt <- factor(means$trt)
model <- logK ~ trt * date + (1 | yard) + (1 | yard:trt) + (1 | yard:date)
measure("means960", 9, function() lme4::lmer(model, means), logLikelihood, 1)
contrasts(means$date) <- contr.sum(12)
contrasts(means$trt) <- contr.sum(2)
tested <- lmerTest::lmer(model, means)
measure("kenwardRoger960", 3, function() {
  anova(tested, type = 3, ddf = "Kenward-Roger")
}, function(table) table[["F value"]][3], 1)

crossed <- read.csv(file.path(work, "crossed.csv"), stringsAsFactors = TRUE)
start <- proc.time()
fit <- lme4::lmer(rating ~ practice + (1 | rater) + (1 | yard) + (1 | week), crossed)
used <- proc.time() - start
cat(sprintf("crossed70000,%.3f,%.6f\n",
  1000 * (used[["user.self"]] + used[["sys.self"]]), logLikelihood(fit)))
