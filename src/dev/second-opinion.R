# Reads simulated pairs as JSON, computes with R's own packages what the tests compare with, prints JSON.
suppressMessages({
  library(jsonlite)
  library(MASS)
  library(epiR)
  library(strucchange)
})

of_pair <- function(pair) {
  own <- pair$own
  other <- pair$other
  ratio <- log(own / other)
  time <- (seq_along(own) - 1) / (length(own) - 1)
  level <- log((own + other) / 2)
  turned <- pair$cadence - mean(pair$cadence)
  fit <- rlm(ratio ~ time + I(level - mean(level)) + turned,
    psi = psi.bisquare, scale.est = "MAD", maxit = 500, acc = 1e-12)
  agreed <- epi.ccc(log(other), log(own))
  change <- breakpoints(breakpoints(ratio ~ 1, h = 5), breaks = 1)
  list(
    robustFit = unname(coef(fit)),
    scale = fit$s,
    concordance = agreed$rho.c$est,
    concordanceInterval = c(agreed$rho.c$lower, agreed$rho.c$upper),
    changePoint = change$breakpoints
  )
}

given <- fromJSON(file("stdin"), simplifyDataFrame = FALSE)
version <- function(name) paste(name, packageVersion(name))
versions <- paste0("R ", getRversion(), ", ", toString(sapply(c("MASS", "epiR", "strucchange"), version)))
cat(toJSON(list(versions = versions, pairs = lapply(given$pairs, of_pair)), auto_unbox = TRUE, digits = NA))
