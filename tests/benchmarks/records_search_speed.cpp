// What a key in the search of Records costs: the processor's time in the second after it, and the time until
// list and chosen document are drawn; beside a bare field with a bare table that the same question fills anew
// for each key, in the same run.
#include <fmt/format.h>

#include <QApplication>
#include <QHeaderView>
#include <QLineEdit>
#include <QSettings>
#include <QStandardItemModel>
#include <QTableView>
#include <QTest>
#include <QVBoxLayout>
#include <algorithm>
#include <chrono>
#include <ctime>
#include <iostream>

#include "app/common/desk_page.h"
#include "app/common/fonts.h"
#include "app/common/wording.h"
#include "app/records/records_place.h"
#include "app/shell/main_window.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

constexpr int kRecords = 250, kMost = 200, kRounds = 3, kSecond = 1000;
constexpr const char* kTyped[] = {"test cov", "WO 1"};

struct Cost {
  double cpu = 0, drawn = 0;  ///< milliseconds
};

double cpuMilliseconds() {
  timespec now{};
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

double medianOf(std::vector<double> values) {
  std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2),
                   values.end());
  return values[values.size() / 2];
}

Cost costOfKey(QWidget& window, QLineEdit& field, char key) {
  const auto start = std::chrono::steady_clock::now();
  const double before = cpuMilliseconds();
  QTest::keyClick(&field, key);
  for (int turn = 0; turn < 4; ++turn) QCoreApplication::processEvents();
  window.repaint();
  Cost out;
  out.drawn = std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
  QTest::qWait(kSecond);
  out.cpu = cpuMilliseconds() - before;
  return out;
}

/// Medians over every key of every text.
Cost typed(QWidget& window, QLineEdit& field) {
  std::vector<double> cpu, drawn;
  for (int round = 0; round < kRounds; ++round)
    for (const char* text : kTyped) {
      field.clear();
      QTest::qWait(kSecond / 4);
      for (const char* key = text; *key != '\0'; ++key) {
        const Cost cost = costOfKey(window, field, *key);
        cpu.push_back(cost.cpu), drawn.push_back(cost.drawn);
      }
    }
  return {medianOf(cpu), medianOf(drawn)};
}

Cost ofRecords(test::SampleShop& shop) {
  Workspace workspace(shop.clock());
  test::need(workspace.openShop(toQt(shop.file().string())));
  Navigator navigator;
  RecordsPlace place(workspace, navigator);
  QWidget& window = place;
  window.resize(1280, 800);
  window.show();
  QTest::qWait(kSecond);
  return typed(window, *place.page()->search());
}

Cost ofABareTable(test::SampleShop& shop) {
  QWidget window;
  auto* field = new QLineEdit;
  auto* table = new QTableView;
  QStandardItemModel rows(0, 4);
  table->setModel(&rows);
  auto* down = new QVBoxLayout(&window);
  down->addWidget(field);
  down->addWidget(table);
  QObject::connect(field, &QLineEdit::textChanged, [&](const QString& text) {
    JobQuery query;
    query.words = fromQt(text);
    query.states = {JobState::Finished, JobState::Sealed, JobState::Disposed};
    query.most = kMost;
    rows.setRowCount(0);
    const auto found = test::need(shop->findJobs(query));
    for (const JobRow& row : found.rows) {
      QList<QStandardItem*> cells;
      for (const std::string& cell : {row.workOrder, row.machine, row.title, std::string(word(row.state))})
        cells << new QStandardItem(toQt(cell));
      rows.appendRow(cells);
    }
  });
  window.resize(1280, 800);
  window.show();
  QTest::qWait(kSecond);
  return typed(window, *field);
}

void compare() {
  test::SampleShop shop;
  for (int record = 0; record < kRecords; ++record) {
    const Id job = shop.startJob();
    if (const std::string refused = shop.work(job); !refused.empty()) throw std::runtime_error(refused);
    test::need(shop->records().seal(job, {"mira", std::string(test::kPin)}, shop.key(), "speed"));
  }
  const Cost bare = ofABareTable(shop), ours = ofRecords(shop);
  std::cout << fmt::format(
      "a key in the search of {} records: {:.2f} ms of CPU in the second after it, drawn after {:.2f} ms; "
      "bare field and table {:.2f} ms and {:.2f} ms; ours is {:.2f} and {:.2f} times it\n",
      kRecords, ours.cpu, ours.drawn, bare.cpu, bare.drawn, ours.cpu / bare.cpu, ours.drawn / bare.drawn);
}

}  // namespace
}  // namespace cw

int main(int count, char** words) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  cw::tellFontsApart();
  const cw::TemporaryFolder own;
  QSettings::setDefaultFormat(QSettings::IniFormat);
  QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, QString::fromStdString(own.path().string()));
  QApplication::setOrganizationName(QStringLiteral("Clampwright tests"));
  QApplication application(count, words);
  cw::MainWindow::applyLook();
  cw::compare();
  return 0;
}
