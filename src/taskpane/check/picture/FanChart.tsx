import { Chart, LinearScale, LineElement, PointElement, ScatterController, type ChartDataset } from "chart.js";
import { useEffect, useRef, type ReactElement } from "react";
import { type UnitSystem, unitOf } from "../../../reference/quantities";
import { makeStyles } from "@griffel/react";
import { useInks } from "./useInks";
import type { FanPicture, Point } from "./pictureOf";

Chart.register(ScatterController, LineElement, PointElement, LinearScale);

const useStyles = makeStyles({ frame: { position: "relative", height: "240px", minWidth: 0 } });

interface FanChartProps {
  readonly fan: FanPicture;
  readonly system: UnitSystem;
}

/** The fan's curve against the ducts', with the point where they meet and the scenarios. A file of its own, loaded late. */
export default function FanChart({ fan, system }: FanChartProps): ReactElement {
  const styles = useStyles();
  const canvas = useRef<HTMLCanvasElement>(null);
  const inks = useInks();
  useEffect(() => {
    if (canvas.current === null) return;
    const line = (data: readonly Point[], ink: string, dash: number[]): ChartDataset<"scatter"> => ({
      data: [...data],
      showLine: true,
      pointRadius: 0,
      borderColor: ink,
      borderDash: dash,
      borderWidth: 2,
      tension: 0,
    });
    const points = (
      data: readonly Point[],
      pointStyle: "circle" | "triangle",
      ink: string,
    ): ChartDataset<"scatter"> => ({
      data: [...data],
      pointStyle,
      pointRadius: pointStyle === "circle" ? 6 : 5,
      backgroundColor: ink,
      borderColor: inks.text,
    });
    const axis = (title: string) => ({
      min: 0,
      title: { display: true, text: title, color: inks.text },
      ticks: { color: inks.text, maxTicksLimit: 6 },
      grid: { color: inks.grid },
      border: { color: inks.text },
    });
    const chart = new Chart(canvas.current, {
      type: "scatter",
      data: {
        datasets: [
          points([fan.works], "circle", inks.fan),
          points(
            fan.scenarios.map(({ point }) => point),
            "triangle",
            inks.ground,
          ),
          line(fan.curve, inks.fan, []),
          line(fan.ducts, inks.ducts, [6, 4]),
        ],
      },
      options: {
        animation: false,
        maintainAspectRatio: false,
        events: [], // nothing hides behind the pointer: the table has the numbers
        scales: {
          x: axis(`Airflow (${unitOf("airflow", system).label})`),
          y: axis(`Pressure (${unitOf("pressure", system).label})`),
        },
      },
    });
    return () => chart.destroy();
  }, [fan, system, inks]);
  return (
    <div className={styles.frame}>
      <canvas
        ref={canvas}
        role="img"
        aria-label="The fan's curve against the ducts'; the table below has the same numbers"
      />
    </div>
  );
}
