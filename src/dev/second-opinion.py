"""Reads simulated pairs as JSON, computes with NumPy and SciPy alone what the tests compare with, prints JSON."""

import json
import platform
import sys

import numpy
import scipy
from scipy import fft, linalg, odr, signal, stats


def change_point(values, least):
    """The split that leaves the least squares around two means, by trying every one."""
    splits = range(least, len(values) - least + 1)
    squares = [((values[:k] - values[:k].mean()) ** 2).sum() + ((values[k:] - values[k:].mean()) ** 2).sum() for k in splits]
    best = int(numpy.argmin(squares))
    return {"at": splits[best], "squares": float(squares[best])}


def deming(x, y, ratio, errors):
    """Orthogonal distance regression, weighted so that var(error of y) / var(error of x) is `ratio`."""
    data = odr.RealData(x, y, sx=errors, sy=numpy.sqrt(ratio) * errors)
    start = numpy.polyfit(x, y, 1)
    fit = odr.ODR(data, odr.unilinear, beta0=start, sstol=1e-15, partol=1e-15, maxit=1000).run()
    return {"slope": float(fit.beta[0]), "intercept": float(fit.beta[1])}


def long_run_error(values, cosines):
    """Error of a mean from the first cosines of a discrete cosine transform."""
    waves = fft.dct(values, type=2, norm="ortho")[1 : cosines + 1]
    return float(numpy.sqrt((waves**2).mean() / len(values)))


def deming_errors(x, y, ratio, errors, cosines):
    """Errors of slope and intercept: each point left out in turn, the whole line anew."""

    def line(x, y, weights):
        (xx, xy), (_, yy) = numpy.cov(x, y, aweights=weights)
        # The line of least distance is the first principal axis, once both err alike.
        root = numpy.sqrt(ratio)
        _, vectors = numpy.linalg.eigh([[xx, xy / root], [xy / root, yy / ratio]])
        slope = root * vectors[1, 1] / vectors[0, 1]
        return numpy.array([slope, numpy.average(y, weights=weights) - slope * numpy.average(x, weights=weights)])

    n = len(x)
    points = (x, y, 1 / errors**2)
    left_out = numpy.array([line(*(numpy.delete(column, i) for column in points)) for i in range(n)])
    pseudo = n * line(*points) - (n - 1) * left_out
    return {"slope": long_run_error(pseudo[:, 0], cosines), "intercept": long_run_error(pseudo[:, 1], cosines)}


def concordance_interval(x, y, cosines):
    """Ends of the interval of Lin's concordance: in Fisher's z, each point left out in turn, t with as many degrees."""

    def z(x, y):
        gap = ((x - y) ** 2).mean()
        return numpy.arctanh(1 - gap / (x.var() + y.var() + (x.mean() - y.mean()) ** 2))

    n = len(x)
    pseudo = [n * z(x, y) - (n - 1) * z(numpy.delete(x, i), numpy.delete(y, i)) for i in range(n)]
    half = stats.t.ppf(0.975, cosines) * long_run_error(numpy.array(pseudo), cosines)
    return [float(numpy.tanh(z(x, y) + sign * half)) for sign in (-1, 1)]


def passing_bablok(x, y):
    """Median slope, shifted by the slopes below -1, its interval, and how far the points bend away from it."""
    i, j = numpy.triu_indices(len(x), 1)
    slopes = (y[j] - y[i]) / (x[j] - x[i])
    slopes = numpy.sort(slopes[slopes != -1])
    shift = int((slopes < -1).sum())
    count = len(slopes)
    reach = stats.norm.ppf(0.975) * numpy.sqrt(len(x) * (len(x) - 1) * (2 * len(x) + 5) / 18)
    first = round((count - reach) / 2)
    slope = float(numpy.median(slopes[2 * shift :]) if shift else numpy.median(slopes))
    intercept = float(numpy.median(y - slope * x))
    residuals, along = y - slope * x - intercept, y + x / slope
    above, below = along[residuals > 1e-9], along[residuals < -1e-9]
    apart = stats.ks_2samp(above, below).statistic
    return {
        "slope": slope,
        "intercept": intercept,
        "low": float(slopes[first + shift - 1]),
        "high": float(slopes[count - first + shift]),
        "bend": float(apart * numpy.sqrt(len(above) * len(below) / (len(above) + len(below)))),
    }


def of_pair(pair):
    own, other, cadence = (numpy.array(pair[name]) for name in ("own", "other", "cadence"))
    ratio = numpy.log(own / other)
    time = numpy.arange(len(own)) / (len(own) - 1)
    level = numpy.log((own + other) / 2)
    design = numpy.column_stack([numpy.ones_like(time), time, level - level.mean(), cadence - cadence.mean()])
    coefficients, squares, _, _ = numpy.linalg.lstsq(design, ratio, rcond=None)
    slope, intercept, low, high = stats.theilslopes(ratio, time)
    percent = 100 * (own / other - 1)
    mean, spread = percent.mean(), percent.std(ddof=1)
    error = spread * numpy.sqrt(1 / len(percent) + 1.96**2 / (2 * (len(percent) - 1)))
    # What one difference adds to the standard deviation of all.
    widening = ((percent - mean) ** 2 - spread**2) / (2 * spread)
    misfit = own - own.mean() / other.mean() * other
    return {
        "overall": {
            "ratio": float(own.mean() / other.mean()),
            # Von Neumann's: half the mean square of successive differences in place of the variance.
            "error": float(numpy.sqrt((numpy.diff(misfit) ** 2).mean() / 2 / len(own)) / other.mean()),
        },
        "limits": {
            "mean": float(mean),
            "low": float(mean - 1.96 * spread),
            "high": float(mean + 1.96 * spread),
            "error": float(error),
            "longRun": [long_run_error(percent + sign * 1.96 * widening, 6) for sign in (-1, 0, 1)],
        },
        # Errors alike everywhere, and errors in proportion to what is measured.
        "deming": [
            [
                {"line": deming(other, own, ratio, errors), "errors": deming_errors(other, own, ratio, errors, 6)}
                for ratio in (1.0, 2.0)
            ]
            for errors in (numpy.ones_like(own), (own + other) / 2)
        ],
        "passingBablok": passing_bablok(other, own),
        "concordanceInterval": concordance_interval(numpy.log(other), numpy.log(own), 6),
        "theilSen": {"slope": float(slope), "low": float(low), "high": float(high)},
        "jointFit": {"coefficients": coefficients.tolist(), "squares": float(squares[0])},
        "changePoint": change_point(ratio, 5),
    }


def of_traces(own, other):
    """Lag by direct correlation, mean-maximal power by sliding windows, an autoregression by its Toeplitz system."""
    own, other = numpy.array(own), numpy.array(other)
    a, b = own - own.mean(), other - other.mean()
    products = signal.correlate(a, b, mode="full", method="direct")
    lags = signal.correlation_lags(len(a), len(b), mode="full")
    covariance = numpy.array([(a[k:] * a[: len(a) - k]).sum() for k in range(5)])
    return {
        "lag": int(lags[numpy.argmax(products)]),
        "peak": float(products.max()),
        "autoregression": linalg.solve_toeplitz(covariance[:4], covariance[1:]).tolist(),
        "meanMaximal": [float(numpy.convolve(own, numpy.ones(d), "valid").max() / d) for d in (1, 5, 15, 60, 300)],
    }


def quantiles():
    return {
        "normal": [float(stats.norm.ppf(p)) for p in (0.6, 0.975, 0.9985, 0.99999)],
        "student": [[f, float(stats.t.ppf(0.975, f))] for f in (1, 2.5, 6, 29, 200)],
        "chiSquaredTail": [[x, f, float(stats.chi2.sf(x, f))] for x, f in ((0.5, 1), (3.8, 1), (9.0, 3), (40.0, 12))],
        "binomialUpper": [[k, n, float(stats.beta.ppf(0.95, k + 1, n - k))] for k, n in ((0, 100), (3, 350), (12, 8500))],
    }


given = json.load(sys.stdin)
grubbs = numpy.cov(numpy.array(given["readings"]))
json.dump(
    {
        "versions": f"Python {platform.python_version()}, NumPy {numpy.__version__}, SciPy {scipy.__version__}",
        "pairs": [of_pair(pair) for pair in given["pairs"]],
        "traces": of_traces(**given["traces"]),
        "quantiles": quantiles(),
        # With three instruments, Grubbs' estimator is the covariance of what one differs by from the two others.
        "grubbs": [
            float(grubbs[i, i] - grubbs[i, j] - grubbs[i, k] + grubbs[j, k]) for i, j, k in ((0, 1, 2), (1, 0, 2), (2, 0, 1))
        ],
    },
    sys.stdout,
)
