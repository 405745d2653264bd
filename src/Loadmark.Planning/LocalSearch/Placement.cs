namespace Loadmark.Planning.LocalSearch;

/// <summary>Where a load may be fed, and over what kind of lead.</summary>
/// <param name="FeedSite">The outlets.</param>
/// <param name="Ends">The place of what the lead does to polarity and plug.</param>
internal readonly record struct Placement(FeedSite FeedSite, int Ends);
