// The PDF of a sealed 40-bolt job, content included, against a plain QPdfWriter text of as many pages with
// as many lines each, in processor time: both only compute. Prints both medians and their ratio.
#include <fmt/format.h>

#include <QApplication>
#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <QTextDocument>
#include <algorithm>
#include <ctime>

#include "app/look/fonts.h"
#include "app/print/record_pdf.h"
#include "tests/support/report_job.h"

namespace cw {
namespace {

constexpr int kRounds = 15;

template <class Work>
double medianProcessorMilliseconds(Work work) {
  std::vector<double> times;
  for (int round = 0; round < kRounds; ++round) {
    const std::clock_t start = std::clock();
    work();
    times.push_back(1e3 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
  }
  std::nth_element(times.begin(), times.begin() + kRounds / 2, times.end());
  return times[kRounds / 2];
}

QByteArray plainText(int pages) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setPageSize(QPageSize(QPageSize::A4));
  QTextDocument document;
  QString text;
  for (int line = 0; line < pages * 50; ++line)
    text += QStringLiteral("Line %1: position 7 clicked at 65 in·lbf by somebody.\n").arg(line);
  document.setPlainText(text);
  document.print(&writer);
  return bytes;
}

int pagesIn(const QByteArray& pdf) {
  return static_cast<int>(pdf.count("/Type /Page\n"));
}

void run() {
  test::Script job = test::ringJob(40);
  const std::string record = test::sealedBytes(job);
  const auto ours = [&] {
    return recordPdf(contentOf(*readRecord(record), {}, plain), {record, {}}, PageSize::A4);
  };
  const int pages = pagesIn(ours());
  const double own = medianProcessorMilliseconds(ours);
  const double baseline = medianProcessorMilliseconds([&] { return plainText(pages); });
  fmt::print("record pdf, 40 bolts, {} pages: {:.1f} ms; plain text of {} pages: {:.1f} ms; ratio {:.2f}\n",
             pages, own, pagesIn(plainText(pages)), baseline, own / baseline);
}

}  // namespace
}  // namespace cw

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  cw::tellFontsApart();
  const QApplication app(argc, argv);
  cw::run();
}
