// SPDX-License-Identifier: MIT
#include "formats/bulletin/page_style.h"

#include <array>
#include <sodium.h>

#include "formats/svg.h"

namespace duskrow::formats {

namespace {

std::string variables(Light light)
{
    const auto colour = [light](Ink ink) { return hexOf(rgbOf(ink, light)); };
    return "--full:" + colour(Ink::Full) + ";--soft:" + colour(Ink::Soft) + ";--paper:" + colour(Ink::Paper)
        + ";--card:" + colour(Ink::Card) + ";--line:" + colour(Ink::Line)
        + ";--accent:" + colour(Ink::Accent);
}

constexpr const char* layout = R"(
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--full);font:1rem/1.5 Inter,system-ui,"Segoe UI",Roboto,sans-serif}
main,footer{max-width:72rem;margin:0 auto;padding:0 1rem}
header{border-top:.5rem solid var(--accent);max-width:72rem;margin:0 auto;padding:1.25rem 1rem .25rem}
header p{margin:.15rem 0;color:var(--soft)}
h1{font-size:1.75rem;line-height:1.2;margin:.1rem 0}
h2{font-size:1.2rem;line-height:1.3;margin:0 0 .6rem}
section{background:var(--card);border:1px solid var(--line);border-radius:.75rem;padding:1rem;margin:1rem 0}
section p{margin:0 0 .7rem;max-width:42rem}
.figures{display:grid;grid-template-columns:repeat(2,1fr);gap:.75rem;margin:1rem 0;padding:0;list-style:none}
.figures li{background:var(--card);border:1px solid var(--line);border-radius:.75rem;padding:.7rem .9rem}
.figures b{display:block;font-size:1.5rem;line-height:1.25}
.figures span{color:var(--soft);font-size:.9rem}
.notice{border:2px solid var(--full);border-radius:.5rem;padding:.4rem .7rem;font-weight:600}
.todo{border-left:.4rem solid var(--accent)}
.caution{font-weight:600}
ul{padding-left:1.2rem;margin:.2rem 0}
li{margin:.3rem 0}
svg{display:block;width:100%;height:auto;font-family:inherit}
.wide{overflow-x:auto}
table{border-collapse:collapse;width:100%;font-size:.95rem;font-variant-numeric:tabular-nums}
caption{text-align:left;color:var(--soft);font-size:.9rem;padding-bottom:.3rem}
th,td{text-align:left;padding:.4rem .6rem .4rem 0;border-bottom:1px solid var(--line);vertical-align:top}
thead th{font-size:.85rem;color:var(--soft);vertical-align:bottom}
.all tbody tr:first-child th,.all tbody tr:first-child td{font-weight:600}
.each tbody th,.plain tbody th{font-weight:400}
.plain tbody tr:last-child th,.plain tbody tr:last-child td{font-weight:600}
.why{color:var(--soft);font-weight:400}
a{color:inherit;text-underline-offset:.2em}
summary{cursor:pointer;padding:.3rem 0}
summary h2{display:inline}
a:focus-visible,summary:focus-visible,.wide:focus-visible{outline:3px solid var(--accent);outline-offset:2px}
footer{color:var(--soft);padding-bottom:2rem;font-size:.9rem}
@media (min-width:56rem){
.figures{grid-template-columns:repeat(4,1fr)}
.two{display:grid;grid-template-columns:1fr 1fr;gap:0 1rem;align-items:start}
h1{font-size:2.25rem}
}
@media (max-width:40rem){
.areas thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.areas tr{display:block;border-bottom:1px solid var(--line);padding:.5rem 0}
.areas th,.areas td{display:flex;justify-content:space-between;gap:1rem;border:0;padding:.1rem 0;text-align:right}
.areas th{font-weight:600}
.areas td::before{content:attr(data-label);color:var(--soft);font-weight:400;text-align:left}
.areas .why::before{content:none}
.areas .why{justify-content:flex-start}
}
@media print{
@page{size:A4;margin:14mm}
body{font-size:9.5pt;line-height:1.35;background:none}
header,main,footer{max-width:none;padding-left:0;padding-right:0}
header{padding-top:.6rem}
h1{font-size:18pt}
h2{font-size:12pt;break-after:avoid}
section,.figures li{border-color:#bbb;padding:.5rem .7rem;margin:.45rem 0;break-inside:avoid}
.figures{grid-template-columns:repeat(4,1fr);gap:.5rem;margin:.5rem 0}
.figures b{font-size:13pt}
.two{display:grid;grid-template-columns:1fr 1fr;gap:0 .6rem;align-items:start}
.map svg{max-height:95mm}
th,td{padding:.12rem .5rem .12rem 0}
li{margin:.1rem 0}
.files{display:none}
tr{break-inside:avoid}
*{print-color-adjust:exact;-webkit-print-color-adjust:exact}
}
)";

} // namespace

std::string pageStyle()
{
    const std::string night = ":root{" + variables(Light::Night) + "}" + inkClasses(Light::Night);
    const std::string day = ":root{" + variables(Light::Day) + "}" + inkClasses(Light::Day);
    return ":root{color-scheme:light dark}\n" + day + "\n@media screen and (prefers-color-scheme:dark){"
        + night + "}" + layout;
}

std::string pagePolicy(const std::string& style)
{
    std::array<unsigned char, crypto_hash_sha256_BYTES> hash{};
    crypto_hash_sha256(hash.data(), reinterpret_cast<const unsigned char*>(style.data()), style.size());
    std::string text(sodium_base64_ENCODED_LEN(hash.size(), sodium_base64_VARIANT_ORIGINAL), '\0');
    sodium_bin2base64(text.data(), text.size(), hash.data(), hash.size(), sodium_base64_VARIANT_ORIGINAL);
    text.pop_back(); // its closing zero
    return "default-src 'none'; style-src 'sha256-" + text + "'; base-uri 'none'; form-action 'none'";
}

} // namespace duskrow::formats
