// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The one object that holds the open book. Models ask it for what stands now, and act through it;
// after every entry it reads anew and says `changed`.

#include "aside.h"
#include "core/store/book.h"
#include "core/work/cone_course.h"
#include "core/work/due.h"
#include "core/work/pollen.h"
#include "core/work/verb_done.h"
#include "rows.h"
#include "speech.h"

#include <QObject>
#include <QStringList>
#include <QTimer>

#include <functional>
#include <memory>
#include <optional>

namespace coneline::window {

/// What stands in the book after the last entry, read in one go.
struct Standing {
  Date today;
  book::Registers registers;
  std::vector<work::LotLine> lots;
  std::vector<work::ConeCourse> cones;
  std::vector<work::PollenLine> pollen;
  std::vector<work::Due> due;
  work::OnHand on_hand;

  [[nodiscard]] const work::LotLine* lot(const Code& code) const;
  [[nodiscard]] const work::ConeLine* cone(const Code& code) const;
  [[nodiscard]] const work::ConeCourse* cone_course(const Code& code) const;
  [[nodiscard]] const work::PollenLine* pollen_lot(const Code& code) const;
  /// Whether anything in the book goes by this code.
  [[nodiscard]] bool knows(const Code& code) const;
};

/// What long work writes to while it goes on.
enum class Touches { nothing, open_book };

class Session : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the front door")
  Q_PROPERTY(bool open READ is_open NOTIFY changed)
  Q_PROPERTY(bool empty READ is_empty NOTIFY changed)
  Q_PROPERTY(QString name READ name NOTIFY changed)
  Q_PROPERTY(QString path READ path NOTIFY changed)
  Q_PROPERTY(bool invented READ invented NOTIFY changed)
  Q_PROPERTY(QString today READ today_shown NOTIFY changed)
  Q_PROPERTY(QString told READ told NOTIFY toldChanged)
  Q_PROPERTY(bool undoable READ undoable NOTIFY toldChanged)
  Q_PROPERTY(QString fault READ fault NOTIFY faultChanged)
  Q_PROPERTY(QString underway READ underway NOTIFY underwayChanged)
  Q_PROPERTY(bool stoppable READ stoppable NOTIFY progressed)
  Q_PROPERTY(double done READ done NOTIFY progressed)
  Q_PROPERTY(QString outcome READ outcome NOTIFY outcomeChanged)
  Q_PROPERTY(coneline::window::Rows* stations READ stations CONSTANT)
  Q_PROPERTY(int dueCount READ due_count NOTIFY changed)
  Q_PROPERTY(QString look READ look WRITE set_look NOTIFY lookChanged)
  Q_PROPERTY(coneline::window::Speech* speech READ speech CONSTANT)

 public:
  /// `today` is fixed while the session lives; the front door gives it.
  explicit Session(Date today, QObject* parent = nullptr);
  ~Session() override;

  /// Opens the book at a path (a file: address is taken too). On failure `fault` says why and what
  /// was open before stays open.
  Q_INVOKABLE bool openBook(const QString& path);
  /// Makes a new book and opens it.
  Q_INVOKABLE bool makeBook(const QString& path, const QString& nursery);
  /// Lets go of the book that is open.
  void close();
  /// Where a new book would be put unless another path is typed.
  Q_INVOKABLE static QString usualPath();
  /// A path as it was typed, or dropped as a file: address.
  static std::filesystem::path path_of(const QString& typed);
  /// Reverses the last thing done. False where that cannot be; `fault` says why.
  Q_INVOKABLE bool undo();
  Q_INVOKABLE bool reverse(qlonglong entry);
  Q_INVOKABLE void forgetFault();
  /// The long work that is underway is not wanted any more. Where it can still be stopped, nothing
  /// came of it, which its `take` is told.
  Q_INVOKABLE void stop();

  [[nodiscard]] bool is_open() const { return book_.has_value(); }
  [[nodiscard]] bool is_empty() const;
  [[nodiscard]] QString name() const;
  [[nodiscard]] QString path() const; ///< of the open book; empty where none is
  [[nodiscard]] bool invented() const { return standing_->registers.title.invented; }
  [[nodiscard]] QString today_shown() const;
  [[nodiscard]] QString told() const { return told_; }
  [[nodiscard]] bool undoable() const { return !undo_.empty() && !stays_; }
  [[nodiscard]] QString fault() const { return fault_; }
  /// Long work that goes on whatever page is looked at, in words; empty where there is none.
  [[nodiscard]] QString underway() const { return underway_; }
  [[nodiscard]] bool stoppable() const; ///< by `stop`
  [[nodiscard]] double done() const;    ///< of the long work, of 1; 0 where nobody can say
  /// What came of copying or moving the book last; empty again with another book.
  [[nodiscard]] QString outcome() const { return outcome_; }
  void set_outcome(const QString& outcome);
  [[nodiscard]] Rows* stations() { return &stations_; }
  [[nodiscard]] int due_count() const { return static_cast<int>(standing_->due.size()); }
  [[nodiscard]] QString look() const { return look_; }
  void set_look(const QString& look);
  [[nodiscard]] Speech* speech() { return &speech_; }

  [[nodiscard]] Date today() const { return today_; }
  [[nodiscard]] const Standing& standing() const { return *standing_; }
  /// For what is looked at after the book was read anew.
  [[nodiscard]] std::shared_ptr<const Standing> kept_standing() const { return standing_; }

  // While long work writes to the book, nothing else does: it is refused at once, and what is to
  // be waited for is said.

  /// Does something in the book through `act`; afterwards what stands is read anew.
  Result<work::Done> act(const std::function<Result<work::Done>(store::Book&)>& act);
  /// The same for what was done in the open book aside from the window's thread.
  Result<work::Done> done_aside(work::Done done);

  /// Keeps in the book what changes nothing shown elsewhere, such as a tap on a counter.
  Result<void> keep(const std::function<Result<void>(store::Book&)>& act);

  /// Asks the book. Nothing where no book is open or it cannot be read; `fault` then says why.
  template <class Ask>
  auto ask(Ask ask) -> std::optional<
      typename decltype(std::declval<store::Book&>().read(std::move(ask)))::value_type> {
    if (!book_)
      return std::nullopt;
    auto answer = book_->read(std::move(ask));
    if (answer)
      return std::move(*answer);
    set_fault(answer.error());
    return std::nullopt;
  }

  /// Does long work aside from the window's thread, whatever page is looked at meanwhile; it is
  /// told to stop when the window goes. `take` gets what came of it on the window's thread. False,
  /// and nothing is done, while there is other such work; `fault` then says what to wait for.
  template <class Work, class Take>
  bool work_long(const QString& said, Touches touches, std::shared_ptr<Course> course, Work work,
                 Take take) {
    if (!begin_long(said, touches, std::move(course)))
      return false;
    long_work_.run(std::move(work), [this, take = std::move(take)](auto answer) mutable {
      end_long();
      take(std::move(answer));
    });
    return true;
  }
  /// The same with the file of a book, which is let go of while `work` replaces it and opened again
  /// whatever came of it; what did not succeed is the session's fault too.
  bool replace_file(const QString& path, const QString& said, std::shared_ptr<Course> course,
                    std::function<Result<void>()> work,
                    std::function<void(const Result<void>&)> take);
  /// Where the book at `from` is open, the same book is opened at `to` in its place; long work that
  /// writes to the book goes on doing so. Does nothing where another book is open.
  Result<void> follow(const QString& from, const QString& to);
  /// When the window is gone: long work is told to stop, and what came of it is taken.
  void end();

  /// What failed, where no page may be left to say it.
  void set_fault(const Fault& fault);

  /// After something was kept that shows elsewhere, such as a place or a route.
  void read_anew();

  /// Writes what is no entry, such as a label stock; nothing of it is undone.
  Result<void> keep(const std::function<Result<void>(store::Writing&)>& keep);

 signals:
  void changed();
  void toldChanged();
  void faultChanged();
  void underwayChanged();
  void progressed();
  void outcomeChanged();
  void lookChanged();

 private:
  bool take(Result<store::Book> book);
  /// False while the book's file is being replaced; `fault` then says so, and no book is opened.
  bool may_open();
  [[nodiscard]] Fault wait_for_it() const;
  bool may_begin_long();
  bool begin_long(const QString& said, Touches touches, std::shared_ptr<Course> course);
  void end_long();
  /// Why nothing can be written now; nothing where it can be.
  [[nodiscard]] std::optional<Fault> unwritable() const;
  void recall_last();
  void remember(std::vector<book::EntryId> entries);
  void tell_stations();

  Date today_;
  std::optional<store::Book> book_;
  std::shared_ptr<const Standing> standing_ = std::make_shared<const Standing>();
  Rows stations_;
  QString told_;
  std::vector<book::EntryId> undo_; ///< what `undo` reverses, in the order they were entered
  bool stays_ = false;              ///< what of it corrected a register is not reversed
  QString fault_;
  QString underway_;
  QString written_;                ///< the path of the book that this writes to, if any
  std::shared_ptr<Course> course_; ///< of what is underway
  double seen_done_ = 0;           ///< what was told last
  QTimer watch_;
  QString outcome_;
  bool replacing_ = false;
  Aside long_work_{nullptr};
  QString look_ = QStringLiteral("day");
  Speech speech_; ///< what stands is read anew when it changes, since it holds texts
};

} // namespace coneline::window
