# Values for RandomEffectsTest, RandomLineTest, PooledSpreadTest, TwoMeansTest and ChartTest: writes
# across.json to standard output. Run with R 4.2.2 and its package metafor 3.8-1:
#   Rscript across.R > across.json
# Data are invented numbers but for the two data sets named, which are in data/.
suppressMessages(library(metafor))
show <- function(x) {
  if (is.list(x)) {
    paste0("{", paste0('"', names(x), '": ', sapply(x, show), collapse = ",\n "), "}")
  } else if (is.character(x)) {
    paste0('"', x, '"')
  } else {
    numbers <- sprintf("%.17g", x)
    if (length(x) == 1) numbers else paste0("[", paste(numbers, collapse = ", "), "]")
  }
}
tight <- list(tol = 1e-15, maxiter = 10000, threshold = 1e-14)

# Known variances: everything by metafor.
known <- function(y, v) {
  m <- rma(y, v, method = "PM", test = "knha", control = tight)
  a <- rma(y, v, method = "PM", test = "adhoc", control = tight)
  k <- confint(m, control = list(tol = 1e-15, maxiter = 10000))$random
  p <- predict(a)
  list(y = y, v = v, tau2 = m$tau2, mean = as.numeric(m$b), se = m$se, low = m$ci.lb, high = m$ci.ub,
       adhoc_low = a$ci.lb, adhoc_high = a$ci.ub, q = m$QE, p = m$QEp, i2 = m$I2 / 100,
       tau_low = k["tau", "ci.lb"], tau_high = k["tau", "ci.ub"],
       i2_low = k["I^2(%)", "ci.lb"] / 100, i2_high = k["I^2(%)", "ci.ub"] / 100,
       predict_low = p$pi.lb, predict_high = p$pi.ub)
}
unequal_y <- c(0.18, 0.05, 0.31, 0.12, 0.22, -0.03)
unequal_v <- c(0.0021, 0.0008, 0.0052, 0.0012, 0.0031, 0.0017)
equal_y <- c(0.21, 0.10, 0.15, 0.34)
alike_y <- c(0.11, 0.13, 0.12)
alike_v <- c(0.002, 0.004, 0.003)

# The same with variances that are multiples of one estimated variance: F by base R. The groups are
# the rails of data/rail.csv (six rails, three measurements each), the first rail with two.
rail <- read.csv("data/rail.csv")
names(rail) <- c("rail", "travel")
rail <- rail[-1, ]
fit <- anova(lm(travel ~ factor(rail), rail))
n <- as.numeric(table(rail$rail))
means <- as.numeric(tapply(rail$travel, rail$rail, mean))
s2 <- fit["Residuals", "Mean Sq"]
nu <- fit["Residuals", "Df"]
q <- function(lambda) { w <- 1 / (1 / n + lambda); m <- sum(w * means) / sum(w); sum(w * (means - m)^2) / s2 }
wald <- function(p) uniroot(function(l) q(l) / 5 - qf(p, 5, nu), c(0, 1e6), tol = 1e-13)$root
lambda <- c(wald(0.975), wald(0.025))
typical <- 5 * sum(n) / (sum(n)^2 - sum(n^2))

# A line through estimates.
x <- c(0, 3, 4, 9, 15, 21)
line <- rma(unequal_y, unequal_v, mods = ~ x, method = "PM", test = "knha", control = tight)
plain <- lm(equal_y ~ c(1, 2, 4, 7))
limits <- confint(plain)[2, ]

# Spreads: the groups of R's InsectSprays (counts of insects, six sprays), whose spreads are unlike.
sprays <- bartlett.test(count ~ spray, InsectSprays)
within <- anova(lm(count ~ spray, InsectSprays))["Residuals", ]

# Means of two days.
one <- c(4.1, 4.4, 3.9, 4.6)
two <- c(5.2, 4.9, 5.6, 5.1, 4.8)
days <- c(4.2, 4.9, 4.4, 5.3, 4.0)
welch <- t.test(two, one)
parts <- c(var(one) / 4, var(two) / 5, 2 * var(days))
df <- sum(parts)^2 / sum(parts^2 / c(3, 4, 4))
half <- qt(0.975, df) * sqrt(sum(parts))

# Three sessions as they are read: seconds without and with a part, round by round.
pairs <- list(list(c(6.1, 6.3, 5.9), c(7.2, 7.9, 7.1)), list(c(5.6, 5.9, 5.5, 5.8), c(7.0, 6.8, 7.1, 7.2)),
  list(c(6.6, 6.4), c(7.3, 7.5)))
ratios <- lapply(pairs, function(p) log(p[[2]] / p[[1]]))
inside <- anova(lm(unlist(ratios) ~ factor(rep(1:3, lengths(ratios)))))
pooled <- rma(sapply(ratios, mean), inside["Residuals", "Mean Sq"] / lengths(ratios), method = "PM",
  test = "adhoc", control = tight)
each <- unlist(pairs, recursive = FALSE)
apart <- anova(lm(log(unlist(each)) ~ factor(rep(seq_along(each), lengths(each)))))["Residuals", "Mean Sq"]

# A chart, by the formulas written out.
values <- c(49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1)
spread <- mean(abs(diff(values))) / (2 / sqrt(pi))
before <- values[1:6]
ahead <- predict(lm(before ~ 1), newdata = data.frame(z = 1), interval = "prediction")

cat(show(list(
  source = "R 4.2.2, metafor 3.8-1, script across.R beside this file",
  unequal = known(unequal_y, unequal_v), equal = known(equal_y, rep(0.003, 4)),
  alike = known(alike_y, alike_v), two = known(c(0.30, 0.05), c(0.004, 0.002)),
  rail = list(means = means, n = n, s2 = s2, nu = nu, p = fit[1, "Pr(>F)"], q = 5 * fit[1, "F value"],
    ratio_low = lambda[1], ratio_high = lambda[2], i2_low = lambda[1] / (lambda[1] + typical),
    i2_high = lambda[2] / (lambda[2] + typical)),
  line = list(x = x, slope = as.numeric(line$b)[2], se = line$se[2], low = line$ci.lb[2],
    high = line$ci.ub[2], tau2 = line$tau2, p = line$pval[2], at_ten = as.numeric(predict(line, 10)$pred)),
  plain = list(x = c(1, 2, 4, 7), slope = as.numeric(coef(plain)[2]), low = as.numeric(limits[1]),
    high = as.numeric(limits[2])),
  sprays = list(bartlett = as.numeric(sprays$statistic), p = sprays$p.value,
    sd = sqrt(within[["Mean Sq"]]), df = within[["Df"]],
    low = sqrt(within[["Sum Sq"]] / qchisq(0.975, within[["Df"]])),
    high = sqrt(within[["Sum Sq"]] / qchisq(0.025, within[["Df"]])),
    upper80 = sqrt(within[["Sum Sq"]] / qchisq(0.2, within[["Df"]])),
    counts = InsectSprays$count),
  days = list(one = one, two = two, days = days, welch_df = as.numeric(welch$parameter),
    welch_low = welch$conf.int[1], welch_high = welch$conf.int[2], df = df,
    low = mean(two) - mean(one) - half, high = mean(two) - mean(one) + half),
  seconds = list(estimate = exp(as.numeric(pooled$b)), low = exp(pooled$ci.lb), high = exp(pooled$ci.ub),
    tau = sqrt(pooled$tau2), q = pooled$QE, p = inside[1, "Pr(>F)"],
    within = sqrt(inside["Residuals", "Mean Sq"]), value_spread = sqrt(inside["Residuals", "Mean Sq"] / 2),
    donning_spread = sqrt(apart), df = inside["Residuals", "Df"],
    upper80 = sqrt(inside["Residuals", "Sum Sq"] / qchisq(0.2, inside["Residuals", "Df"]) / 2)),
  chart = list(values = values, mean = mean(values), spread = spread, low = mean(values) - 3 * spread,
    high = mean(values) + 3 * spread, expected_low = ahead[2], expected_high = ahead[3]))), "\n")
