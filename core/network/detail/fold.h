// SPDX-License-Identifier: GPL-3.0-or-later
// The one step of the elimination: what is drawn at a node, J = G V + s (a Norton equivalent, real and imaginary parts
// side by side, so that loads may depend on |V|), seen from the other end of the branch that feeds it.
// With V_node = V - zp J - 1 zn (1'J): first the pole impedances, then the common neutral as a correction of rank one,
// which stays exact when the neutral's impedance is huge (a lost neutral) or zero.
#pragma once

#include <array>
#include <cmath>
#include <cstddef>
#include <utility>

namespace cordreach::network::detail {

struct Impedance {
  double re = 0;
  double im = 0;
};

// Real 2x2, row by row.
struct Block {
  double a = 0;
  double b = 0;
  double c = 0;
  double d = 0;
};

inline constexpr double kSmallestDeterminant = 1e-14;  // at a fold exactly: step on with a large step, damped outside

inline Block inverse(const Block& m) {
  double determinant = m.a * m.d - m.b * m.c;
  if (std::abs(determinant) < kSmallestDeterminant) determinant = std::copysign(kSmallestDeterminant, determinant);
  const double scale = 1.0 / determinant;
  return {m.d * scale, -m.b * scale, -m.c * scale, m.a * scale};
}

inline Block product(const Block& x, const Block& y) {
  return {x.a * y.a + x.b * y.c, x.a * y.b + x.b * y.d, x.c * y.a + x.d * y.c, x.c * y.b + x.d * y.d};
}

// What a node keeps for the way back: one pole 4 + 2 numbers, more poles N*N + N + 4.
template <int P>
inline constexpr std::size_t kNortonSize = P == 1 ? 6 : std::size_t{4 * P * P + 2 * P + 4};

// One pole: in place, and the folded values are also what the other end sees.
inline void foldSingle(double* norton, Impedance z) {
  const Block g{norton[0], norton[1], norton[2], norton[3]};
  const Block drop{1.0 + g.a * z.re + g.b * z.im, g.b * z.re - g.a * z.im, g.c * z.re + g.d * z.im,
                   1.0 + g.d * z.re - g.c * z.im};
  const Block m = inverse(drop);
  const Block folded = product(m, g);
  const double re = m.a * norton[4] + m.b * norton[5];
  const double im = m.c * norton[4] + m.d * norton[5];
  norton[0] = folded.a;
  norton[1] = folded.b;
  norton[2] = folded.c;
  norton[3] = folded.d;
  norton[4] = re;
  norton[5] = im;
}

// Solves A X = B in place (B becomes X), by Gauss with row exchange.
template <std::size_t N, std::size_t M>
void solveInPlace(std::array<std::array<double, N>, N>& a, std::array<std::array<double, M>, N>& b) {
  for (std::size_t column = 0; column < N; ++column) {
    std::size_t best = column;
    for (std::size_t row = column + 1; row < N; ++row) {
      if (std::abs(a[row][column]) > std::abs(a[best][column])) best = row;
    }
    std::swap(a[column], a[best]);
    std::swap(b[column], b[best]);
    if (std::abs(a[column][column]) < kSmallestDeterminant) {
      a[column][column] = std::copysign(kSmallestDeterminant, a[column][column]);
    }
    const double scale = 1.0 / a[column][column];
    for (std::size_t row = column + 1; row < N; ++row) {
      const double factor = a[row][column] * scale;
      for (std::size_t k = column + 1; k < N; ++k) a[row][k] -= factor * a[column][k];
      for (std::size_t k = 0; k < M; ++k) b[row][k] -= factor * b[column][k];
    }
  }
  for (std::size_t column = N; column-- > 0;) {
    const double scale = 1.0 / a[column][column];
    for (std::size_t k = 0; k < M; ++k) {
      double value = b[column][k];
      for (std::size_t later = column + 1; later < N; ++later) value -= a[column][later] * b[later][k];
      b[column][k] = value * scale;
    }
  }
}

// The pole impedances of a bundle: norton becomes (I + G zp)^-1 (G, s).
template <int P>
void foldPoles(double* norton, Impedance z) {
  constexpr std::size_t n = 2 * P;
  std::array<std::array<double, n>, n> drop{};
  std::array<std::array<double, n + 1>, n> right{};
  for (std::size_t row = 0; row < n; ++row) {
    const double* g = norton + row * n;
    for (std::size_t pole = 0; pole < n; pole += 2) {
      drop[row][pole] = g[pole] * z.re + g[pole + 1] * z.im;
      drop[row][pole + 1] = g[pole + 1] * z.re - g[pole] * z.im;
    }
    drop[row][row] += 1.0;
    for (std::size_t k = 0; k < n; ++k) right[row][k] = g[k];
    right[row][n] = norton[n * n + row];
  }
  solveInPlace(drop, right);
  for (std::size_t row = 0; row < n; ++row) {
    for (std::size_t k = 0; k < n; ++k) norton[row * n + k] = right[row][k];
    norton[n * n + row] = right[row][n];
  }
}

// The neutral: w = zn (1'J) = W (1'G V + 1's), kept as W behind norton. `seen` (N*N + N) is what the other end sees.
template <int P>
void foldNeutral(double* norton, Impedance z, double* seen) {
  constexpr std::size_t n = 2 * P;
  const double* s = norton + n * n;
  double rowSum[2][n] = {};  // 1'G
  double colSum[n][2] = {};  // G 1
  double sourceSum[2] = {};
  Block total{};
  for (std::size_t row = 0; row < n; ++row) {
    for (std::size_t k = 0; k < n; ++k) {
      rowSum[row % 2][k] += norton[row * n + k];
      colSum[row][k % 2] += norton[row * n + k];
    }
    sourceSum[row % 2] += s[row];
  }
  for (std::size_t k = 0; k < n; k += 2) {
    total.a += rowSum[0][k];
    total.b += rowSum[0][k + 1];
    total.c += rowSum[1][k];
    total.d += rowSum[1][k + 1];
  }
  const Block zn{z.re, -z.im, z.im, z.re};
  Block drop = product(total, zn);
  drop.a += 1.0;
  drop.d += 1.0;
  const Block w = product(zn, inverse(drop));
  double* kept = norton + n * n + n;
  kept[0] = w.a;
  kept[1] = w.b;
  kept[2] = w.c;
  kept[3] = w.d;
  for (std::size_t row = 0; row < n; ++row) {
    const double wRe = colSum[row][0] * w.a + colSum[row][1] * w.c;
    const double wIm = colSum[row][0] * w.b + colSum[row][1] * w.d;
    for (std::size_t k = 0; k < n; ++k) {
      seen[row * n + k] = norton[row * n + k] - wRe * rowSum[0][k] - wIm * rowSum[1][k];
    }
    seen[n * n + row] = s[row] - wRe * sourceSum[0] - wIm * sourceSum[1];
  }
}

// Back again: the voltage at the node (and nothing else is needed) from that at the feeding end.
template <int P>
void unfold(const double* norton, Impedance pole, const double* feedingV, double* nodeV) {
  constexpr std::size_t n = 2 * P;
  double sumRe = 0;
  double sumIm = 0;
  double current[n];
  for (std::size_t row = 0; row < n; ++row) {
    double value = norton[n * n + row];
    for (std::size_t k = 0; k < n; ++k) value += norton[row * n + k] * feedingV[k];
    current[row] = value;
    (row % 2 == 0 ? sumRe : sumIm) += value;
  }
  const double* w = norton + n * n + n;
  const double shiftRe = w[0] * sumRe + w[1] * sumIm;
  const double shiftIm = w[2] * sumRe + w[3] * sumIm;
  for (std::size_t row = 0; row < n; ++row) {
    for (std::size_t k = 0; k < n; k += 2) {
      current[row] -= norton[row * n + k] * shiftRe + norton[row * n + k + 1] * shiftIm;
    }
  }
  for (std::size_t k = 0; k < n; k += 2) {
    nodeV[k] = feedingV[k] - shiftRe - pole.re * current[k] + pole.im * current[k + 1];
    nodeV[k + 1] = feedingV[k + 1] - shiftIm - pole.re * current[k + 1] - pole.im * current[k];
  }
}

inline void unfoldSingle(const double* norton, Impedance z, const double* feedingV, double* nodeV) {
  const double re = norton[0] * feedingV[0] + norton[1] * feedingV[1] + norton[4];
  const double im = norton[2] * feedingV[0] + norton[3] * feedingV[1] + norton[5];
  nodeV[0] = feedingV[0] - z.re * re + z.im * im;
  nodeV[1] = feedingV[1] - z.re * im - z.im * re;
}

}  // namespace cordreach::network::detail
