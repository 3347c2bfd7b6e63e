// An answer or the reason why there is none. Expected failures are values; nobody can forget to look at one.
//
//     Result<Pattern> p = parsePattern(json);
//     if (!p) return p.error();
//     use(*p);
#pragma once

#include "core/base/finding.h"

#include <utility>
#include <variant>

namespace laneward {

/// The kinds map to the exit status of the command line: 2, 3, 3 and 4.
enum class ErrorKind {
    Usage,    ///< the call itself is wrong
    Io,       ///< cannot read or write
    Invalid,  ///< read, but its content is not acceptable
    Refused,  ///< rights, newer schema, conflict with another edit
};

struct Error {
    ErrorKind kind = ErrorKind::Invalid;
    Finding finding;
};

inline Error fault(ErrorKind kind, QByteArray rule, QString subject, std::vector<Value> values = {}) {
    return {kind, {Severity::Fault, std::move(rule), std::move(subject), std::move(values)}};
}

template <class T>
class [[nodiscard]] Result {
public:
    Result(T value) : m_value(std::in_place_index<0>, std::move(value)) {}
    Result(Error error) : m_value(std::in_place_index<1>, std::move(error)) {}

    explicit operator bool() const { return m_value.index() == 0; }
    const T& operator*() const& { return std::get<0>(m_value); }
    T& operator*() & { return std::get<0>(m_value); }
    T&& operator*() && { return std::get<0>(std::move(m_value)); }
    const T* operator->() const { return &std::get<0>(m_value); }
    T* operator->() { return &std::get<0>(m_value); }
    const Error& error() const { return std::get<1>(m_value); }

private:
    std::variant<T, Error> m_value;
};

struct Nothing {
    friend bool operator==(const Nothing&, const Nothing&) = default;
};

/// Success without a value.
using Outcome = Result<Nothing>;

}  // namespace laneward
