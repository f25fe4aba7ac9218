# More cases beside R's packages: Rscript variants.R FOLDER writes the data of each case as
# CASE.csv and all results to expected.csv (case, quantity, value). R 4.2.2, nlme 3.1-162,
# lme4 1.1-31, lmerTest 3.1-3, pbkrtest 0.5.2, emmeans 1.8.4-1 (Debian 12).
suppressPackageStartupMessages({
  library(nlme)
  library(lmerTest)
  library(pbkrtest)
  library(emmeans)
})
folder <- commandArgs(TRUE)[1]
out <- file.path(folder, "expected.csv")
cat("case,quantity,value\n", file = out)
emit <- function(case, quantity, value) {
  cat(sprintf("%s,%s,%.15g\n", case, quantity, as.numeric(value)), file = out, append = TRUE, sep = "")
}
coding <- function(name) options(contrasts = c(name, "contr.poly"))

# lme4's search ends about 1e-4 short of the optimum; Newton's steps on differences go the rest.
polish <- function(fn, par, lower, upper, control, ...) {
  found <- lme4::nloptwrap(par = par, fn = fn, lower = lower, upper = upper,
    control = list(xtol_abs = 1e-10, ftol_abs = 1e-12, maxeval = 100000))
  at <- ifelse(found$par - lower < 1e-3, lower, found$par)
  free <- at > lower
  part <- function(x) fn(replace(at, free, x))
  for (i in 1:4) {
    at[free] <- at[free] - solve(numDeriv::hessian(part, at[free]), numDeriv::grad(part, at[free]))
  }
  list(par = at, fval = fn(at), conv = 0, message = "")
}
tight <- lme4::lmerControl(optimizer = polish, check.conv.singular = "ignore", calc.derivs = FALSE)

fitted <- function(case, data, formula) {
  write.csv(data, file.path(folder, paste0(case, ".csv")), row.names = FALSE, quote = FALSE)
  coding("contr.treatment")
  plain <- lme4::lmer(formula, data, control = tight)
  emit(case, "logLik", logLik(plain))
  parts <- as.data.frame(lme4::VarCorr(plain))
  for (i in seq_len(nrow(parts))) {
    name <- if (is.na(parts$var1[i])) "residual" else
      paste("variance", parts$grp[i], parts$var1[i], parts$var2[i], sep = "|")
    emit(case, name, parts$vcov[i])
  }
  # One term alone: Satterthwaite's degrees of freedom depend on the coding there, on no other place.
  treatment <- lmerTest::lmer(formula, data, control = tight)
  coding("contr.sum")
  fit <- lmerTest::lmer(formula, data, control = tight)
  alone <- length(attr(terms(fit), "term.labels")) == 1
  for (kind in c("Kenward-Roger", "Satterthwaite")) {
    table <- anova(if (alone) treatment else fit, type = 3, ddf = kind)
    for (i in seq_len(nrow(table))) {
      emit(case, paste(kind, i, "F", sep = "|"), table[["F value"]][i])
      emit(case, paste(kind, i, "df", sep = "|"), table[["DenDF"]][i])
    }
  }
  fit
}

compared <- function(case, fit, formula, adjust, ...) {
  means <- emmeans(fit, formula, lmer.df = "kenward-roger", ...)
  found <- summary(pairs(means, adjust = adjust), infer = c(TRUE, TRUE))
  for (i in seq_len(nrow(found))) {
    for (field in c("estimate", "SE", "df", "p.value")) {
      emit(case, paste(adjust, i, field, sep = "|"), found[[field]][i])
    }
  }
}

factors <- function(data, ...) {
  for (name in c(...)) data[[name]] <- factor(as.character(data[[name]]),
    levels = levels(factor(as.character(data[[name]]))))
  data.frame(data)
}

machines <- factors(Machines, "Worker", "Machine")[-c(1, 5, 6, 17, 30, 31, 32, 44), ]
fit <- fitted("machines_cut", machines, score ~ Machine + (1 | Worker) + (1 | Worker:Machine))
compared("machines_cut", fit, ~Machine, "tukey")
compared("machines_cut", fit, ~Machine, "hommel")

pixel <- factors(Pixel, "Dog", "Side")
fit <- fitted("pixel", pixel, pixel ~ day + I(day^2) + (day | Dog) + (1 | Dog:Side))

oxide <- factors(Oxide, "Lot", "Wafer", "Source")[-c(2, 11, 12, 40, 55), c("Source", "Lot", "Wafer", "Thickness")]
fit <- fitted("oxide", oxide, Thickness ~ Source + (1 | Lot) + (1 | Lot:Wafer))

fit <- fitted("rail", factors(Rail, "Rail")[-c(4, 9), ], travel ~ 1 + (1 | Rail))

data(cake, package = "lme4")
cake <- data.frame(recipe = cake$recipe, replicate = cake$replicate,
  temperature = as.numeric(as.character(cake$temperature)), angle = cake$angle)
cake <- cake[-c(3, 8, 9, 31, 77, 78, 79, 120, 201, 202, 203), ]
cake$temperature <- factor(cake$temperature)
fit <- fitted("cake", cake, angle ~ recipe * temperature + (1 | recipe:replicate) + (1 | replicate))
compared("cake", fit, ~temperature, "holm")
compared("cake", fit, ~temperature | recipe, "sidak")

chick <- factors(ChickWeight, "Chick", "Diet")
chick <- chick[as.integer(as.character(chick$Chick)) %% 2 == 1, c("weight", "Time", "Chick", "Diet")]
chick <- factors(chick, "Chick", "Diet")
fit <- fitted("chick_log", chick, log(weight) ~ Time * Diet + (Time | Chick))

sleep <- data.frame(lme4::sleepstudy)[-c(2, 3, 14, 30, 31, 32, 33, 34, 35, 36, 77, 150, 179), ]
fit <- fitted("sleep_missing", sleep, Reaction ~ Days + (Days | Subject))
fit <- fitted("sleep_apart", sleep, Reaction ~ Days + (1 | Subject) + (0 + Days | Subject))

penicillin <- data.frame(lme4::Penicillin)[-c(1, 2, 3, 20, 50, 51, 90, 143), ]
fit <- fitted("penicillin_cut", penicillin, diameter ~ 1 + (1 | plate) + (1 | sample))

oats <- factors(data.frame(nlme::Oats), "Block", "Variety", "nitro")[-c(4, 9, 17, 18, 19, 40, 66), ]
fit <- fitted("oats_cut", oats, yield ~ Variety * nitro + (1 | Block) + (1 | Block:Variety))
compared("oats_cut", fit, ~nitro | Variety, "tukey")

yields <- factors(npk, "block", "N", "P", "K")[-c(5, 16), ]
fit <- fitted("npk_log", yields, log(yield) ~ N + P + K + N:P + (1 | block))
compared("npk_log", fit, ~N, "none")

weights <- data.frame(MASS::anorexia)
write.csv(weights, file.path(folder, "anorexia.csv"), row.names = FALSE, quote = FALSE)
coding("contr.sum")
fit <- lm(Postwt ~ Prewt + Treat, weights)
table <- drop1(fit, . ~ ., test = "F")
for (i in 1:2) emit("anorexia", paste("F", i, sep = "|"), table[["F value"]][i + 1])
for (adjust in c("tukey", "holm", "hommel", "BH", "bonferroni", "sidak")) {
  compared("anorexia", fit, ~Treat, adjust)
}
dunnett <- summary(multcomp::glht(fit, linfct = multcomp::mcp(Treat = c("CBT - Cont = 0", "FT - Cont = 0"))),
  test = multcomp::adjusted("single-step", abseps = 1e-8, maxpts = 1e7))
emit("anorexia", "dunnett|1|p.value", dunnett$test$pvalues[1])
emit("anorexia", "dunnett|2|p.value", dunnett$test$pvalues[2])

correlated <- function(case, data, formula, ...) {
  write.csv(data, file.path(folder, paste0(case, ".csv")), row.names = FALSE, quote = FALSE)
  coding("contr.treatment")
  fit <- gls(formula, data, control = glsControl(tolerance = 1e-10, msTol = 1e-12, msMaxIter = 500), ...)
  emit(case, "logLik", logLik(fit))
  emit(case, "sigma2", fit$sigma^2)
  rho <- coef(fit$modelStruct$corStruct, unconstrained = FALSE)
  for (i in seq_along(rho)) emit(case, paste("rho", i, sep = "|"), rho[i])
  if (!is.null(fit$modelStruct$varStruct)) {
    ratios <- coef(fit$modelStruct$varStruct, unconstrained = FALSE)
    for (i in seq_along(ratios)) emit(case, paste("ratio", i, sep = "|"), ratios[i])
  }
  table <- summary(fit)$tTable
  for (i in seq_len(nrow(table))) {
    emit(case, paste("coefficient", i, sep = "|"), table[i, "Value"])
    emit(case, paste("se", i, sep = "|"), table[i, "Std.Error"])
  }
}
correlated("chick_car1", chick, log(weight) ~ Time * Diet, correlation = corCAR1(form = ~ Time | Chick))
growth <- data.frame(nlme::Orthodont)[-c(2, 7, 8, 30, 55, 81, 100), ]
growth <- factors(growth, "Subject", "Sex")
growth$visit <- (growth$age - 6) / 2
correlated("growth_ar1", growth, distance ~ age * Sex, correlation = corAR1(form = ~ visit | Subject))
correlated("growth_het", growth, distance ~ age * Sex, correlation = corAR1(form = ~ visit | Subject),
  weights = varIdent(form = ~ 1 | visit))
correlated("growth_un", growth, distance ~ age * Sex, correlation = corSymm(form = ~ visit | Subject),
  weights = varIdent(form = ~ 1 | visit))
ovary <- data.frame(nlme::Ovary)
ovary <- ovary[as.integer(as.character(ovary$Mare)) <= 6, ]
ovary <- data.frame(Mare = as.integer(as.character(ovary$Mare)), Time = ovary$Time,
  sine = sin(2 * pi * ovary$Time), cosine = cos(2 * pi * ovary$Time), follicles = ovary$follicles)
correlated("ovary_car1", ovary, follicles ~ sine + cosine, correlation = corCAR1(form = ~ Time | Mare))

# Simulated, since no data set at hand is built like them. Whole seeds, so that every run makes the same.
levelled <- function(name, count) paste0(name, seq_len(count))
effect <- function(groups, sd) {
  groups <- factor(groups)
  rnorm(nlevels(groups), 0, sd)[groups]
}
set.seed(11)
yards <- expand.grid(yard = levelled("y", 7), practice = c("c", "m", "r"), date = levelled("d", 4), core = 1:2)
yards$laboratory <- levelled("l", 5)[(as.integer(yards$yard) * 3 + as.integer(yards$date) * 2 + yards$core) %% 5 + 1]
yards$value <- round(10 + 0.4 * as.integer(yards$practice) + effect(yards$yard, 1) +
  effect(paste(yards$yard, yards$practice), 0.6) + effect(paste(yards$yard, yards$date), 0.5) +
  effect(yards$laboratory, 0.7) + rnorm(nrow(yards), 0, 0.8), 3)
yards <- yards[-sample(nrow(yards), 31), c("yard", "practice", "date", "laboratory", "value")]
fit <- fitted("nested_and_crossed", yards, value ~ practice * date + (1 | yard) + (1 | yard:practice) +
  (1 | yard:date) + (1 | laboratory))
compared("nested_and_crossed", fit, ~practice, "hommel")

slopes <- expand.grid(plot = levelled("p", 14), day = c(0, 3, 7, 14, 21))
slopes$arm <- ifelse(as.integer(slopes$plot) %% 2 == 0, "a", "b")
slopes$rain <- round(rnorm(nrow(slopes)), 3)
slopes$value <- round(5 + 0.1 * slopes$day + effect(slopes$plot, 1) + effect(slopes$plot, 0.08) * slopes$day +
  effect(slopes$plot, 0.5) * slopes$rain + rnorm(nrow(slopes), 0, 0.5), 3)
slopes <- slopes[-sample(nrow(slopes), 8), ]
fit <- fitted("two_slopes_apart", slopes, value ~ arm * day + rain + (day + rain || plot))

workers <- expand.grid(yard = levelled("y", 10), arm = c("a", "b", "c"), core = 1:3)
each <- matrix(rnorm(30), 10) %*% chol(matrix(c(1, 0.5, 0.2, 0.5, 2, 0.3, 0.2, 0.3, 0.5), 3))
workers$value <- round(3 + each[cbind(as.integer(workers$yard), as.integer(workers$arm))] +
  0.5 * as.integer(workers$arm) + rnorm(nrow(workers), 0, 0.4), 3)
workers <- workers[-sample(nrow(workers), 17), c("yard", "arm", "value")]
fit <- fitted("arms_vary", workers, value ~ arm + (0 + arm | yard))
compared("arms_vary", fit, ~arm, "bonferroni")
