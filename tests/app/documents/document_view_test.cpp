#include "app/documents/document_view.h"

#include <gmock/gmock.h>

#include <QCoreApplication>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextLayout>
#include <QTextTable>

#include "app/common/wording.h"
#include "app/documents/document_columns.h"
#include "app/look/colours.h"
#include "core/report/sheet_document.h"
#include "tests/app/look.h"
#include "tests/support/sample_job.h"

namespace cw {
namespace {

Document oneTable() {
  Document out;
  out.title = "WO 1";
  Table table{{{"No.", 1, true}, {"What", 5}}, {}};
  table.rows.push_back({{"1"}, {"stands"}});
  table.rows.push_back({{"2"}, {"corrected", Ink::Struck}});
  out.sections.push_back({"Entries", {std::move(table)}, false});
  return out;
}

QTextCursor found(const DocumentView& view, const char* text) {
  return view.document()->find(QLatin1String(text));
}

TEST(DocumentView, StrikesThroughWhatWasCorrected) {
  DocumentView view;
  view.present(oneTable());
  EXPECT_FALSE(found(view, "stands").charFormat().fontStrikeOut());
  EXPECT_TRUE(found(view, "corrected").charFormat().fontStrikeOut());
}

TEST(DocumentView, SetsNumbersToTheRight) {
  DocumentView view;
  view.present(oneTable());
  EXPECT_EQ(found(view, "2").blockFormat().alignment(), Qt::AlignRight);
  EXPECT_NE(found(view, "corrected").blockFormat().alignment(), Qt::AlignRight);
}

TEST(DocumentView, FollowsAChangeOfPalette) {
  DocumentView view;
  view.setPalette(paletteOf(Scheme::Light));
  view.present(oneTable());
  view.setPalette(paletteOf(Scheme::Dark));
  EXPECT_EQ(found(view, "stands").charFormat().foreground().color(), inkOf(paletteOf(Scheme::Dark)));
}

TEST(DocumentView, TakesATableWithoutRowsAtAnyWidth) {
  Document empty = oneTable();
  std::get<Table>(empty.sections.front().blocks.front()).rows.clear();
  for (const int width : {60, 600}) {
    DocumentView view;
    view.resize(width, 400);
    view.present(empty);
    EXPECT_FALSE(found(view, "Entries").isNull()) << width;
  }
}

TEST(DocumentView, DrawsAJoint) {
  Document with = oneTable();
  DocumentView view;
  view.resize(600, 900);
  view.show();
  view.present(with);
  const qreal without = view.document()->size().height();
  with.sections.front().blocks.push_back(drawingOf(test::sampleSheet().joints.front()));
  view.present(with);
  EXPECT_GT(view.document()->size().height(), without + 200);
}

TEST(DocumentView, ReplacesTheDocumentBefore) {
  DocumentView view;
  view.present(oneTable());
  Document other;
  other.title = "WO 2";
  view.present(other);
  EXPECT_EQ(view.toPlainText().trimmed(), QStringLiteral("WO 2"));
}

/// Where a line begins inside a word.
QStringList brokenWords(const QTextDocument& document) {
  QStringList out;
  for (QTextBlock block = document.begin(); block.isValid(); block = block.next())
    for (int i = 1; i < block.layout()->lineCount(); ++i) {
      const int at = block.layout()->lineAt(i).textStart();
      const QChar before = block.text().at(at - 1);
      if (!before.isSpace() && before != kMayBreak) out << block.text();
    }
  return out;
}

TEST(DocumentView, BreaksNoWordInAnyWidth) {
  const Document sheet = sheetDocument(test::sampleSheet(), plain);
  DocumentView view;
  view.show();
  view.present(sheet);
  for (int width = 320; width <= 1600; width += 20) {
    view.resize(width, 700);
    QCoreApplication::processEvents();
    view.document()->size();  // laid out to its end
    EXPECT_THAT(brokenWords(*view.document()).join(QLatin1Char('|')).toStdString(), testing::IsEmpty())
        << width << " wide";
    EXPECT_EQ(view.horizontalScrollBar()->maximum(), 0) << width << " wide";
  }
}

TEST(DocumentView, KeepsItsTextWhereItIsSqueezedToNothing) {
  const Document sheet = sheetDocument(test::sampleSheet(), plain);
  DocumentView view;
  view.resize(640, 480);
  view.show();
  view.present(sheet);
  const QString before = view.toPlainText();
  for (const int width : {80, 20, 1, 0}) {
    view.resize(width, 400);
    view.present(sheet);
    EXPECT_TRUE(view.toPlainText().contains(QStringLiteral("Test pump"))) << width;
  }
  view.resize(640, 480);
  EXPECT_EQ(view.toPlainText(), before);
}

TEST(DocumentView, WritesATableAsItsRowsWhereItHasNoRoom) {
  Document document = oneTable();
  auto& table = std::get<Table>(document.sections.front().blocks.front());
  table.columns[1].heading = "Incontrovertibly";
  DocumentView view;
  view.show();
  const auto textIn = [&](int width) {
    view.resize(width, 700);
    view.present(document);
    return view.toPlainText().toStdString();
  };
  EXPECT_THAT(textIn(800), testing::HasSubstr("No.\nIncontrovertibly\n1\nstands\n2\ncorrected"));
  EXPECT_THAT(textIn(200),
              testing::HasSubstr("No.\n1\nIncontrovertibly\nstands\nNo.\n2\nIncontrovertibly\ncorrected"));
}

TEST(DocumentView, SaysWhereToReadOn) {
  Document document = oneTable();
  std::get<Table>(document.sections.front().blocks.front()).rows[1][1].note = "see entry 3";
  DocumentView view;
  view.present(document);
  EXPECT_FALSE(found(view, "see entry 3").charFormat().fontStrikeOut());
  EXPECT_TRUE(found(view, "corrected").charFormat().fontStrikeOut());
}

}  // namespace
}  // namespace cw
