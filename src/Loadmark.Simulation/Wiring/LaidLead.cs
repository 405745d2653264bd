using Loadmark.Core.Ratings;

namespace Loadmark.Simulation.Wiring;

/// <summary>A stretch of a feed's lead as laid.</summary>
/// <param name="Feed">The feed.</param>
/// <param name="Figures">The lead.</param>
/// <param name="Part">The stretch.</param>
internal sealed record LaidLead(WiredFeed Feed, LeadModel Figures, LeadBuilder.LaidPart Part);
