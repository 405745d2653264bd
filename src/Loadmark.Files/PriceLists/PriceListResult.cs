using System.Collections.Immutable;
using Loadmark.Core.Offers;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;

namespace Loadmark.Files.PriceLists;

/// <summary>What came of reading a price list: its offers, or the errors that are in the way.</summary>
/// <param name="Offers">The offers in the order of the file, at least one; null exactly when there is any error.</param>
/// <param name="Errors">
/// What is wrong, from the top of the file down: at most <see cref="RigFileReader.MostErrors"/>, and then one that says how many more.
/// </param>
public sealed record PriceListResult(ValueList<Offer>? Offers, ImmutableArray<FileError> Errors);
