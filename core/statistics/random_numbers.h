// Random numbers that are the same on every machine: the generator xoshiro256++ 1.0 (Blackman and Vigna 2021, ACM TOMS 47(4);
// seeded by splitmix64 as its authors advise), and distributions of Boost.Random, which are defined by their code where those of
// the standard library are not.
#pragma once

#include <boost/random/exponential_distribution.hpp>
#include <boost/random/gamma_distribution.hpp>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/uniform_01.hpp>

#include <array>
#include <bit>
#include <cstdint>
#include <limits>

namespace laneward {

class Xoshiro {
public:
    using result_type = std::uint64_t;

    explicit Xoshiro(std::uint64_t seed) {
        for (std::uint64_t& word : m_state) {
            seed += 0x9e3779b97f4a7c15u;
            std::uint64_t z = seed;
            z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
            z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
            word = z ^ (z >> 31);
        }
    }
    /// Begins in that state, which must not be all zeros.
    explicit Xoshiro(const std::array<std::uint64_t, 4>& state) : m_state(state) {}

    static constexpr result_type min() { return 0; }
    static constexpr result_type max() { return std::numeric_limits<result_type>::max(); }

    result_type operator()() {
        auto& s = m_state;
        const std::uint64_t result = std::rotl(s[0] + s[3], 23) + s[0];
        const std::uint64_t t = s[1] << 17;
        s[2] ^= s[0];
        s[3] ^= s[1];
        s[1] ^= s[2];
        s[0] ^= s[3];
        s[2] ^= t;
        s[3] = std::rotl(s[3], 45);
        return result;
    }

private:
    std::array<std::uint64_t, 4> m_state;
};

/// What is drawn for paths. Each call takes as many numbers of the generator as it needs.
class Draws {
public:
    explicit Draws(std::uint64_t seed) : m_generator(seed) {}

    double uniform() { return boost::random::uniform_01<double>()(m_generator); }          ///< 0 up to, not including, 1
    double normal() { return boost::random::normal_distribution<double>()(m_generator); }  ///< ziggurat
    double exponential() { return boost::random::exponential_distribution<double>()(m_generator); }       ///< mean 1
    double gamma(double shape) { return boost::random::gamma_distribution<double>(shape)(m_generator); }  ///< scale 1

private:
    Xoshiro m_generator;
};

}  // namespace laneward
