# Lives fitted with the R package survival (and the likelihood written out with dweibull for profile intervals).
#
# Rscript life_fits.R data      writes the package's open data sets lung, ovarian and aml as lines  set,age,failed
# Rscript life_fits.R           reads such lines and writes for each set
#   fit,set,shape,scale,loglik,var ln shape,var ln scale,cov
#   profile,set,shape low,high,scale low,high       95 %, the quantile of chi-squared times 1 + 2 / lives
#   median,set,median,low,high
#   step,set,age,at risk,failed,survival,std err,low,high
# Rscript life_fits.R time      reads one set and writes the processor time of one survreg fit in ms (median of 9)
suppressPackageStartupMessages(library(survival))
options(digits = 15)
task <- c(commandArgs(trailingOnly = TRUE), "fit")[1]

say <- function(...) cat(paste(..., sep = ","), "\n", sep = "")

if (task == "data") {
  one <- function(set, time, failed) cat(paste(set, time, as.integer(failed), sep = ","), sep = "\n")
  one("lung", lung$time, lung$status == 2)
  one("ovarian", ovarian$futime, ovarian$fustat == 1)
  one("aml maintained", aml$time[aml$x == "Maintained"], aml$status[aml$x == "Maintained"] == 1)
  one("aml nonmaintained", aml$time[aml$x == "Nonmaintained"], aml$status[aml$x == "Nonmaintained"] == 1)
  quit()
}

lives <- read.csv(file("stdin"), header = FALSE, col.names = c("set", "age", "failed"), stringsAsFactors = FALSE)

if (task == "time") {
  once <- function() system.time(survreg(Surv(age, failed) ~ 1, data = lives), gcFirst = FALSE)
  once()
  times <- replicate(9, sum(once()[1:2]))
  say("time", 1000 * median(times))
  quit()
}

control <- survreg.control(rel.tolerance = 1e-13, maxiter = 200)
for (set in unique(lives$set)) {
  one <- lives[lives$set == set, ]
  fit <- survreg(Surv(age, failed) ~ 1, data = one, control = control)
  v <- fit$var
  say("fit", set, 1 / fit$scale, exp(coef(fit)), fit$loglik[1], v[2, 2], v[1, 1], -v[1, 2])

  f <- one$failed == 1
  loglik <- function(shape, scale)
    sum(dweibull(one$age[f], shape, scale, log = TRUE)) + sum(pweibull(one$age[!f], shape, scale, lower = FALSE, log = TRUE))
  at <- c(log(1 / fit$scale), coef(fit))
  drop <- qchisq(0.95, 1) / 2 * (1 + 2 / nrow(one))
  wide <- 8 * sqrt(c(v[2, 2], v[1, 1]))
  best <- function(value, which) {
    other <- 3 - which
    g <- function(x) if (which == 1) loglik(exp(value), exp(x)) else loglik(exp(x), exp(value))
    optimize(g, at[other] + c(-2, 2) * wide[other], maximum = TRUE, tol = 1e-10)$objective
  }
  end <- function(which, side) {
    g <- function(x) best(x, which) - fit$loglik[1] + drop
    exp(uniroot(g, sort(c(at[which], at[which] + side * wide[which])), tol = 1e-10)$root)
  }
  say("profile", set, end(1, -1), end(1, 1), end(2, -1), end(2, 1))

  curve <- survfit(Surv(age, failed) ~ 1, data = one)
  middle <- quantile(curve, 0.5)
  say("median", set, middle$quantile, middle$lower, middle$upper)
  s <- summary(curve, censored = TRUE)
  cat(paste("step", set, s$time, s$n.risk, s$n.event, s$surv, s$std.err, s$lower, s$upper, sep = ","), sep = "\n")
}
