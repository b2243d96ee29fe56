# Makes src/test/resources/statistics/log-rank.csv: Rscript src/test/oracle/log_rank.R
# The log-rank test by survdiff of R's survival package on its own data; with late entry by the score test of coxph with
# ties = "exact", which is the log-rank test with its hypergeometric variance. A life is entry:exit, + where it goes on.
library(survival)
text <- function(entry, exit, status) {
  paste(paste0(entry, ":", exit, ifelse(status == 1, "", "+")), collapse = " ")
}
source <- sprintf("R %s.%s survival %s", R.version$major, R.version$minor, packageVersion("survival"))
row <- function(name, entry, exit, status, first) {
  late <- any(entry > 0)
  both <- coxph(Surv(entry, exit, status) ~ first, ties = "exact")
  d <- if (late) NULL else survdiff(Surv(exit, status) ~ !first)
  data.frame(
    case = name,
    first = text(entry[first], exit[first], status[first]),
    second = text(entry[!first], exit[!first], status[!first]),
    observed = sum(status[first]),
    expected = if (late) NA else d$exp[1],
    variance = if (late) NA else d$var[1, 1],
    chi_square = if (late) both$score else d$chisq,
    p = pchisq(if (late) both$score else d$chisq, 1, lower.tail = FALSE),
    source = paste(source, if (late) "coxph score" else "survdiff"))
}
o <- survival::ovarian
a <- survival::aml
v <- survival::veteran
set.seed(20261129)
n <- 40
entry <- round(runif(n, 0, 6), 2)
exit <- round(entry + rweibull(n, 2, 8) + 0.01, 2)
status <- rbinom(n, 1, 0.6)
tied.entry <- rep(c(0, 1, 2, 3), 8)
tied.exit <- tied.entry + rep(1:4, each = 8)
tied.status <- rep(c(1, 0, 1, 1, 0, 1, 1, 0), 4)
rows <- rbind(
  row("ovarian", rep(0, nrow(o)), o$futime, o$fustat, o$rx == 1),
  row("aml", rep(0, nrow(a)), a$time, a$status, a$x == "Maintained"),
  row("veteran", rep(0, nrow(v)), v$time, v$status, v$trt == 1),
  row("late entry", entry, exit, status, seq_len(n) %% 2 == 0),
  row("late entry, ties", tied.entry, tied.exit, tied.status, seq_along(tied.exit) %% 3 == 0))
write.csv(format(rows, digits = 15), "src/test/resources/statistics/log-rank.csv", row.names = FALSE, quote = TRUE)
