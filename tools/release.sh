#!/usr/bin/env bash
# Makes a release of the commit that is checked out, in a new folder: the same to the last byte wherever it is made with the same SDK, and
# with SHA256SUMS of all files in it.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

fail() {
  echo "release: $1" >&2
  exit 2
}

(($# == 1)) || fail "usage: tools/release.sh FOLDER"
out=$(realpath -m "$1")
[[ ! -e $out ]] || fail "$1 is there already. Name a new folder."
[[ -z $(git status --porcelain) ]] || fail "there are changes that are not committed, and a release is of a commit."

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
# What is released has been tested: the analysers have had their say. Where the clone came from would be told in the symbols, and another clone's would differ.
dotnet publish src/Loadmark --configuration Release --runtime linux-x64 --self-contained false --output "$out" \
  -p:ContinuousIntegrationBuild=true -p:EnableSourceLink=false -p:RestoreLockedMode=true \
  -p:RunAnalyzers=false -p:EnforceCodeStyleInBuild=false -nologo -verbosity:quiet
cd "$out"
find . -type f ! -name SHA256SUMS -printf '%P\0' | LC_ALL=C sort -z | xargs -0 sha256sum >SHA256SUMS
echo "$(wc -l <SHA256SUMS) files in $out; their digests have the digest $(sha256sum SHA256SUMS | cut -d' ' -f1)"
