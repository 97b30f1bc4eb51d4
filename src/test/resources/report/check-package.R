# Reads a data package of a session by its own description alone, checks it and makes its comparisons
# again with t.test and qt.
#
#   Rscript check-package.R FOLDER
#
# Base R only, so it brings its own small reader of JSON. Prints for each look at each comparison:
# measure, condition, look, estimate, standard error, degrees of freedom, critical value, lower and
# upper limit; the critical value of a first look is R's, the others are the table's. Stops with exit
# status 1 at the first fault. Paired designs only.

folder <- commandArgs(trailingOnly = TRUE)[1]
must <- function(holds, ...) if (!isTRUE(holds)) stop(..., call. = FALSE)

json <- function(text) {
  chars <- strsplit(text, "")[[1]]
  at <- 1
  space <- function() while (at <= length(chars) && grepl("[[:space:]]", chars[at])) at <<- at + 1
  string <- function() {
    at <<- at + 1
    out <- character()
    while (chars[at] != "\"") {
      if (chars[at] == "\\") {
        at <<- at + 1
        escaped <- switch(chars[at], n = "\n", r = "\r", t = "\t", b = "\b", f = "\f",
          u = intToUtf8(strtoi(paste(chars[at + 1:4], collapse = ""), 16L)), chars[at])
        if (chars[at] == "u") at <<- at + 4
        out <- c(out, escaped)
      } else {
        out <- c(out, chars[at])
      }
      at <<- at + 1
    }
    at <<- at + 1
    paste(out, collapse = "")
  }
  value <- function() {
    space()
    if (chars[at] == "\"") return(string())
    if (chars[at] == "{" || chars[at] == "[") {
      object <- chars[at] == "{"
      close <- if (object) "}" else "]"
      out <- list()
      at <<- at + 1
      space()
      while (chars[at] != close) {
        key <- NULL
        if (object) {
          key <- string()
          space()
          at <<- at + 1
        }
        item <- value()
        if (object) out[[key]] <- item else out <- c(out, list(item))
        space()
        if (chars[at] == ",") at <<- at + 1
        space()
      }
      at <<- at + 1
      return(out)
    }
    from <- at
    while (at <= length(chars) && !grepl("[],}[:space:]]", chars[at])) at <<- at + 1
    word <- paste(chars[from:(at - 1)], collapse = "")
    switch(word, true = TRUE, false = FALSE, null = NA, as.numeric(word))
  }
  value()
}

typed <- function(cells, field, where) {
  there <- !is.na(cells)
  limits <- field$constraints
  if (isTRUE(limits$required)) must(all(there), where, ": required")
  if (isTRUE(limits$unique)) must(!anyDuplicated(cells[there]), where, ": unique")
  if (!is.null(limits$enum)) must(all(cells[there] %in% unlist(limits$enum)), where, ": enum")
  out <- switch(field$type,
    integer = suppressWarnings(as.integer(cells)),
    number = suppressWarnings(as.numeric(cells)),
    boolean = ifelse(cells == "true", TRUE, ifelse(cells == "false", FALSE, NA)),
    datetime = {
      plain <- sub("([+-][0-9]{2}):([0-9]{2})$", "\\1\\2", cells)
      as.POSIXct(strptime(plain, "%Y-%m-%dT%H:%M:%OS%z", tz = "UTC"))
    },
    string = cells,
    stop(where, ": type ", field$type)
  )
  must(all(is.na(out) == !there), where, ": not of its type")
  out
}

read <- function(resource) {
  path <- file.path(folder, resource$path)
  must(file.size(path) == resource$bytes, resource$name, ": bytes")
  cells <- read.csv(path,
    colClasses = "character", na.strings = unlist(resource$schema$missingValues),
    check.names = FALSE, encoding = "UTF-8", sep = resource$dialect$delimiter,
    quote = resource$dialect$quoteChar, comment.char = "", strip.white = FALSE
  )
  fields <- resource$schema$fields
  must(identical(names(cells), vapply(fields, function(f) f$name, "")), resource$name, ": header")
  for (field in fields) {
    cells[[field$name]] <-
      typed(cells[[field$name]], field, paste0(resource$name, ".", field$name))
  }
  key <- unlist(resource$schema$primaryKey)
  must(!anyDuplicated(cells[key]) && !anyNA(cells[key]), resource$name, ": primary key")
  cells
}

close <- function(one, other, ...) {
  must(abs(one - other) <= 1e-9 * max(abs(one), abs(other)), ..., ": ", one, " and ", other)
}

package <- json(paste(readLines(file.path(folder, "datapackage.json"), encoding = "UTF-8"),
  collapse = "\n"))
must(package$profile == "tabular-data-package", "profile")
tables <- lapply(package$resources, read)
names(tables) <- vapply(package$resources, function(r) r$name, "")
for (resource in package$resources) {
  for (link in resource$schema$foreignKeys) {
    from <- tables[[resource$name]][[link$fields]]
    to <- tables[[link$reference$resource]][[link$reference$fields]]
    must(all(is.na(from) | from %in% to), resource$name, ": ", link$fields)
  }
}
plan <- package[["rigside-plan"]]
must(plan$design == "rounds", "a design other than rounds")
shared <- nrow(tables$conditions) - 1
if (plan[["shared-over-measures"]]) shared <- shared * max(1, sum(tables$measures$decides))
for (at in seq_len(nrow(tables$comparisons))) {
  row <- tables$comparisons[at, ]
  values <- tables[[paste0("values-", row$measure)]]
  pairs <- merge(values[values$condition == row$condition, ],
    values[values$condition == row$reference, ], by = "round")
  pairs <- head(pairs[order(pairs$round), ], row$n)
  must(nrow(pairs) == row$n, "n")
  ratio <- row$compared_by == "ratio"
  inward <- if (ratio) log else identity
  outward <- if (ratio) exp else identity
  spent <- (1 - plan$confidence) / shared * (row$n / plan$most)^plan$exponent
  test <- t.test(inward(pairs$value.x) - inward(pairs$value.y), conf.level = 1 - spent)
  where <- paste(row$measure, row$condition, row$look)
  critical <- if (row$look == 1) qt(1 - spent / 2, test$parameter[[1]]) else row$critical
  half <- critical * test$stderr + row$rounding_shift
  limits <- outward(test$estimate[[1]] + c(-1, 1) * half)
  close(row$estimate, outward(test$estimate[[1]]), where, " estimate")
  close(row$standard_error, test$stderr, where, " standard error")
  close(row$degrees_of_freedom, test$parameter[[1]], where, " degrees of freedom")
  close(row$critical, critical, where, " critical")
  close(row$low, limits[1], where, " low")
  close(row$high, limits[2], where, " high")
  if (row$look == 1 && row$rounding_shift == 0) {
    close(row$low, outward(test$conf.int[1]), where, " low of t.test")
    close(row$high, outward(test$conf.int[2]), where, " high of t.test")
  }
  cat(where, sprintf("%.17g", c(outward(test$estimate[[1]]), test$stderr, test$parameter[[1]],
    critical, limits)), "\n")
}
