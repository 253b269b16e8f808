#pragma once
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "core/joint/working.h"
#include "core/units/stated.h"

// Recomputes a working from what it shows and nothing else: the stranger with pen and paper.
namespace cw::testing_joint {

/// Value of a formula text over named values. Throws std::runtime_error (in tests only) on what it cannot
/// read.
class PenAndPaper {
 public:
  explicit PenAndPaper(std::map<std::string, double> known) : m_known(std::move(known)) {}

  double valueOf(std::string_view formula) {
    m_rest = formula;
    const double value = sum();
    if (!m_rest.empty()) throw std::runtime_error("cannot read “" + std::string(m_rest) + "”");
    return value;
  }
  void learn(const std::string& symbol, double value) { m_known[symbol] = value; }

 private:
  bool take(std::string_view token) {
    if (!m_rest.starts_with(token)) return false;
    m_rest.remove_prefix(token.size());
    return true;
  }
  void need(std::string_view token) {
    if (!take(token))
      throw std::runtime_error("expected " + std::string(token) + " at " + std::string(m_rest));
  }
  double sum() {
    double value = product();
    for (;;) {
      if (take("+"))
        value += product();
      else if (take("-"))
        value -= product();
      else
        return value;
    }
  }
  double product() {
    double value = power();
    for (;;) {
      if (take("·"))
        value *= power();
      else if (take("/"))
        value /= power();
      else
        return value;
    }
  }
  double power() {
    const double value = atom();
    if (take("²")) return value * value;
    if (take("°")) return value * kPi / 180;
    return value;
  }
  double atom() {
    if (take("√(")) return std::sqrt(closing());
    if (take("cos(")) return std::cos(closing());
    if (take("tan(")) return std::tan(closing());
    if (take("exp(")) return std::exp(closing());
    if (take("ln(")) return std::log(closing());
    if (take("min(")) return extreme([](double a, double b) { return std::min(a, b); });
    if (take("max(")) return extreme([](double a, double b) { return std::max(a, b); });
    if (take("(")) return closing();
    if (take("π")) return kPi;
    if (!m_rest.empty() && std::isdigit(static_cast<unsigned char>(m_rest.front()))) return number();
    return named();
  }
  double closing() {
    const double value = sum();
    need(")");
    return value;
  }
  template <class Pick>
  double extreme(Pick pick) {
    double value = sum();
    while (take(",")) value = pick(value, sum());
    need(")");
    return value;
  }
  double number() {
    const auto end = std::min(m_rest.find_first_not_of("0123456789."), m_rest.size());
    const std::string digits(m_rest.substr(0, end));
    m_rest.remove_prefix(end);
    return std::stod(digits);
  }
  double named() {
    std::string best;
    for (const auto& [symbol, value] : m_known)
      if (symbol.size() > best.size() && m_rest.starts_with(symbol)) best = symbol;
    if (best.empty()) throw std::runtime_error("unknown symbol at “" + std::string(m_rest) + "”");
    m_rest.remove_prefix(best.size());
    return m_known[best];
  }

  std::map<std::string, double> m_known;
  std::string_view m_rest;
};

/// Every step follows from what stands above it, to a relative 2·10⁻⁵ (six digits are shown).
inline void expectRecomputable(const Working& working, double tolerance = 2e-5) {
  ASSERT_FALSE(working.steps.empty());
  EXPECT_FALSE(working.formula.empty());
  PenAndPaper paper({});
  for (const Working::Given& row : working.given) {
    EXPECT_FALSE(row.source.empty()) << row.symbol;
    EXPECT_FALSE(row.meaning.empty()) << row.symbol;
    paper.learn(row.symbol, std::stod(row.value));
  }
  for (const Working::Step& row : working.steps) {
    try {
      const double shown = std::stod(row.value);
      const double found = paper.valueOf(row.formula);
      EXPECT_NEAR(found, shown, tolerance * std::max(std::abs(shown), 1e-3))
          << row.symbol << " = " << row.formula;
      paper.learn(row.symbol, shown);
    } catch (const std::exception& trouble) {
      ADD_FAILURE() << row.symbol << " = " << row.formula << ": " << trouble.what();
    }
  }
}

}  // namespace cw::testing_joint
