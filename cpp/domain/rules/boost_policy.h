// SPDX-License-Identifier: MIT
#pragma once

#include <boost/math/policies/policy.hpp>

namespace duskrow::domain {

// How Boost.Math is called here: nothing throws, and doubles stay doubles. For sources only.
using NoThrow =
    boost::math::policies::policy<boost::math::policies::domain_error<boost::math::policies::ignore_error>,
        boost::math::policies::pole_error<boost::math::policies::ignore_error>,
        boost::math::policies::overflow_error<boost::math::policies::ignore_error>,
        boost::math::policies::evaluation_error<boost::math::policies::ignore_error>,
        boost::math::policies::rounding_error<boost::math::policies::ignore_error>,
        boost::math::policies::promote_double<false>>;

} // namespace duskrow::domain
