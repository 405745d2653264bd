using Google.OrTools.Sat;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>Whether a lead takes from a source, and how many loads of each group are on it then.</summary>
internal sealed record SlotChoice(LeadSlot Slot, Source Source, IntVar Used, List<(LoadGroup Load, IntVar Count, long Most)> Loads);
