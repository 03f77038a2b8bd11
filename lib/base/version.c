/* SPDX-License-Identifier: MIT */
#include <ingle/version.h>

const char *ingle_version(void)
{
    return INGLE_VERSION;
}
